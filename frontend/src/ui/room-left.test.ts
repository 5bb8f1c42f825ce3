import { describe, expect, it } from "vitest";
import { isTooLong, roomLeft } from "./room-left";

describe("roomLeft", () => {
  it("says nothing far from the limit, and where there is none", () => {
    expect(roomLeft("a few words", 200)).toBeNull();
    expect(roomLeft("a".repeat(5_000), undefined)).toBeNull();
  });

  it("says how much is left near the limit", () => {
    expect(roomLeft("a".repeat(188), 200)).toBe("12 characters left");
    expect(roomLeft("a".repeat(199), 200)).toBe("1 character left");
    expect(roomLeft("a".repeat(200), 200)).toBe("0 characters left");
  });

  it("says how many are too many, and cuts none off", () => {
    expect(roomLeft("a".repeat(203), 200)).toBe("3 characters too many: at most 200 are taken. Nothing is cut off.");
  });

  it("counts as the studio does, not by code units", () => {
    expect("😀".length).toBe(2);
    expect(roomLeft("😀".repeat(199), 200)).toBe("1 character left");
  });
});

describe("isTooLong", () => {
  it("leaves out the blanks around, as what is sent does", () => {
    expect(isTooLong(` ${"a".repeat(40)} `, 40)).toBe(false);
    expect(isTooLong("a".repeat(41), 40)).toBe(true);
  });
});
