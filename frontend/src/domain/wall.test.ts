import { describe, expect, it } from "vitest";
import { instantOf } from "./wall";

const LONDON = "Europe/London";

describe("instantOf", () => {
  it("reads the studio's wall clock, in summer and in winter", () => {
    expect(instantOf("2026-10-31T08:40", LONDON)?.toISOString()).toBe("2026-10-31T08:40:00.000Z");
    expect(instantOf("2026-07-01T08:40", LONDON)?.toISOString()).toBe("2026-07-01T07:40:00.000Z");
  });

  // British summer time: Summer Time Order 2002 (SI 2002/262); it ended on 25 October 2026 and began on 29 March, at 01:00 UTC.
  it("takes the first of an hour that comes twice, and the next for one that never comes", () => {
    expect(instantOf("2026-10-25T01:30", LONDON)?.toISOString()).toBe("2026-10-25T00:30:00.000Z");
    expect(instantOf("2026-03-29T01:30", LONDON)?.toISOString()).toBe("2026-03-29T01:30:00.000Z");
  });

  it("says no to what is no time", () => {
    expect(instantOf("yesterday", LONDON)).toBeNull();
    expect(instantOf("", LONDON)).toBeNull();
  });
});
