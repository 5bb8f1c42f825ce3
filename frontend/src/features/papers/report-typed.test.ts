import { describe, expect, it } from "vitest";
import { NO_REPORT, reportFields, resultOf } from "./report-typed";

describe("a result", () => {
  it("keeps that the laboratory looked no lower", () => {
    expect(resultOf("< 0.1")).toEqual({ value: 0.1, isBelow: true });
    expect(resultOf("0,07")).toEqual({ value: 0.07, isBelow: false });
  });

  it("goes as typed where it is no figure, so that the studio names it", () => {
    expect(resultOf("none")).toEqual({ value: "none", isBelow: false });
    expect(resultOf("")).toEqual({ value: "", isBelow: false });
  });
});

describe("a report", () => {
  const typed = { ...NO_REPORT, laboratory: " Assay Office ", day: "2026-10-30", lead: "<0.1", cadmium: "0.01" };
  const jar = { inside_depth_mm: 110, capacity_ml: 600, contact: "table" };

  it("says what was tested by its design", () => {
    expect(reportFields(typed, jar, "c103")).toEqual({
      commission_id: "c103", depth_mm: 110, volume_ml: 600, contact: "table", laboratory: "Assay Office", reported_on: "2026-10-30", unit: "mg_per_l",
      lead_value: 0.1, lead_is_below: true, cadmium_value: 0.01, cadmium_is_below: false,
    });
  });

  it("leaves out the lid, the batch and the load of which nothing was typed", () => {
    expect(Object.keys(reportFields({ ...typed, lidLead: "<0.06" }, null, null))).toContain("lid_lead_mg");
    expect(Object.keys(reportFields(typed, null, null))).not.toContain("lid_lead_mg");
    expect(Object.keys(reportFields(typed, null, null))).not.toContain("glaze_batch_id");
  });
});
