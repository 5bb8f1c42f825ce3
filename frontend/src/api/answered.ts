/**
 * An answer as it is sent: whole. The document calls a field optional where a row has a default for it, which is true of what
 * is written and never of what is read.
 */
export type Answered<Shape> = Shape extends readonly (infer Row)[]
  ? Answered<Row>[]
  : Shape extends object
    ? { [Name in keyof Shape]-?: Answered<Exclude<Shape[Name], undefined>> }
    : Shape;
