import { describe, expect, it } from "vitest";
import type { QueueGroup } from "../../api/shapes-firings";
import { layerWords, roomOf } from "./queue-words";

describe("the room of a layer", () => {
  it("is litres by point or comma", () => {
    expect(roomOf(" 12 ")).toBe(12);
    expect(roomOf("4,5")).toBe(4.5);
    expect(roomOf("  ")).toBeNull();
  });

  it.each(["0", "-3", "12 l", "1.500.0", "nan", "1e9", "20000"])("is not %s", (typed) => {
    expect(roomOf(typed)).toBeNaN();
  });
});

describe("whose ware gets the layer", () => {
  const layer = { room_l: 12, taken: ["a"], put_off: [{ piece_id: "b", reason: "After Piet's (Promised for 13 November): needs 9 l, 1 l left." }], left_l: 1, offer: "1 l left over for small ware." };
  const group: QueueGroup = { kind: "glaze", cone: "6", litres: 20, oldest_days: 16, rows: [], layer };

  it("is said of each piece, with what goes before it", () => {
    expect(layerWords(group, "a")).toBe("gets the layer");
    expect(layerWords(group, "b")).toBe("After Piet's (Promised for 13 November): needs 9 l, 1 l left");
  });

  it("is not said while nobody asked", () => {
    expect(layerWords({ ...group, layer: null }, "a")).toBeNull();
  });
});
