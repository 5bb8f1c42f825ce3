import { describe, expect, it } from "vitest";
import { load } from "./firing-sample";
import { slotFaults, slotFields, slotOf, typedInstant } from "./slot";

const LONDON = "Europe/London";
const slot = slotOf(load(), LONDON);

describe("a slot", () => {
  it("is typed on the studio's clock and sent in universal time", () => {
    // British Summer Time is an hour ahead; on 2 November it is over.
    expect(typedInstant("2026-07-01T17:00:00Z", LONDON)).toBe("2026-07-01T18:00");
    expect(slot.startsAt).toBe("2026-11-02T18:00");
    expect(slotFields(slot, LONDON)).toMatchObject({ starts_at: "2026-11-02T18:00:00.000Z", cutoff_at: "2026-11-02T16:00:00.000Z", cone: "04" });
  });

  it("leaves the cut-off to the studio where none was typed", () => {
    expect("cutoff_at" in slotFields({ ...slot, cutoffAt: "" }, LONDON)).toBe(false);
  });

  it("names each field that is missing or cannot be", () => {
    expect(slotFaults(slot, LONDON)).toEqual({});
    expect(Object.keys(slotFaults({ ...slot, kilnId: null, cone: " ", startsAt: "" }, LONDON))).toEqual(["kilnId", "cone", "startsAt"]);
    expect(slotFaults({ ...slot, cutoffAt: "2026-11-02T19:00" }, LONDON).cutoffAt).toContain("at the latest");
  });
});
