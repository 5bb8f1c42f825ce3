import "fake-indexeddb/auto";
import { describe, expect, it } from "vitest";
import { openDb } from "./db";
import { keepLent, keyOf, left, markOf, peek, readLent, takeMarks, without } from "./numbers";

const LENT = [{ first: 28, last: 30, next: 29 }, { first: 48, last: 67, next: 48 }];

describe("lent numbers", () => {
  it("are read in the order lent, over the end of a block", () => {
    expect(peek("T", LENT, 3)).toEqual(["T29", "T30", "T48"]);
    expect(left(LENT)).toBe(22);
    expect(markOf("T", 7)).toBe("T07");
    expect(markOf("BB", 1204)).toBe("BB1204");
  });

  it("leave no empty block behind", () => {
    expect(without(LENT, 3)).toEqual([{ first: 48, last: 67, next: 49 }]);
    expect(without(LENT, 0)).toEqual(LENT);
    expect(without(LENT, 99)).toEqual([]);
  });

  it("say how many there are when too many are asked for", () => {
    expect(peek("T", [{ first: 1, last: 2, next: 2 }], 5)).toEqual(["T02"]);
    expect(peek("T", [], 5)).toEqual([]);
  });
});

describe("on the phone", () => {
  it("are cut once, however many ask at the same time, and stay cut after a restart", async () => {
    const db = await openDb("numbers-once");
    const key = keyOf("barn", "d1", "T");
    await keepLent(db, key, 28, 47);
    await keepLent(db, key, 28, 47);

    const cut = await Promise.all([takeMarks(db, key, "T", 2), takeMarks(db, key, "T", 1), takeMarks(db, key, "T", 2)]);
    db.close();
    const again = await openDb("numbers-once");

    expect(new Set(cut.flat()).size).toBe(5);
    expect(await readLent(again, key)).toEqual([{ first: 28, last: 47, next: 33 }]);
  });

  it("are not shared between studios or devices", async () => {
    const db = await openDb("numbers-apart");
    await keepLent(db, keyOf("barn", "d1", "T"), 28, 47);

    expect(await takeMarks(db, keyOf("mill", "d1", "T"), "T", 1)).toEqual([]);
    expect(await takeMarks(db, keyOf("barn", "d2", "T"), "T", 1)).toEqual([]);
  });
});
