import { describe, expect, it } from "vitest";
import { subjectOf } from "./use-hands";

const PIECE = "0199e1aa-0000-7000-8000-000000000001";

describe("subjectOf", () => {
  it("names what was asked of a thing", () => {
    expect(subjectOf(`/api/v1/studios/barn/pieces/${PIECE}/stage-events/`)).toBe("stage events");
  });

  it("names the kind of a thing itself", () => {
    expect(subjectOf(`/api/v1/studios/barn/pieces/${PIECE}/`)).toBe("pieces");
  });
});
