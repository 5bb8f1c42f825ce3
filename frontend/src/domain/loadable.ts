/** What a screen knows: nothing yet, something, or why not. Exactly one of the three. */
export type Loadable<Value, Failure> =
  | { state: "loading"; isSlow: boolean }
  | { state: "ready"; value: Value; heardAt: Date; isFresh: boolean }
  | { state: "failed"; failure: Failure };
