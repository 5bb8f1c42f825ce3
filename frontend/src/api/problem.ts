/** The two ways a call can end badly. Nothing else leaves this folder as an error. */

export interface FieldError {
  pointer: string;
  code: string;
  detail: string;
}

/** An RFC 9457 problem document; whatever else the server named is in `facts`. */
export interface Problem {
  type: string;
  title: string;
  status: number;
  detail: string;
  errors: FieldError[];
  facts: Record<string, unknown>;
}

/** The server answered, and said no. */
export class ProblemError extends Error {
  constructor(
    readonly problem: Problem,
    /** What the server asked us to wait, counted from now. [s] */
    readonly retryAfter_s: number | null = null,
  ) {
    super(problem.detail || problem.title);
    this.name = "ProblemError";
  }

  /** The last word of the type: `wrong-sign-in`. */
  get code(): string {
    return this.problem.type.split("/").pop() ?? "";
  }
}

/** There was no answer, or none that came from the studio. */
export class OfflineError extends Error {
  constructor(readonly why: "no-signal" | "no-studio") {
    super(why === "no-signal" ? "No signal." : "The studio does not answer.");
    this.name = "OfflineError";
  }
}

export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

const text = (value: unknown): string => (typeof value === "string" ? value : "");

function fieldErrors(value: unknown): FieldError[] {
  if (!Array.isArray(value)) return [];
  return value.filter(isRecord).map((one) => ({
    pointer: text(one["pointer"]),
    code: text(one["code"]),
    detail: text(one["detail"]),
  }));
}

/** Read a problem document; a body that is none (a proxy's) becomes `about:blank`. */
export function problemOf(status: number, body: unknown): Problem {
  if (!isRecord(body) || typeof body["title"] !== "string") {
    return { type: "about:blank", title: `The answer was ${String(status)}.`, status, detail: "", errors: [], facts: {} };
  }
  const { type, title, detail, errors, ...rest } = body;
  const facts = Object.fromEntries(Object.entries(rest).filter(([name]) => name !== "status"));
  return { type: text(type) || "about:blank", title: text(title), status, detail: text(detail), errors: fieldErrors(errors), facts };
}

/** What to say beside a field: the first error whose pointer names it. */
export function errorAt(problem: Problem | null, pointer: string): string | null {
  return problem?.errors.find((one) => one.pointer === pointer)?.detail ?? null;
}
