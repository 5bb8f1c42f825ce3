import { describe, expect, it } from "vitest";
import type { FitItem, FitLevel } from "../../api/shapes-firings";
import { boxOf, drawShelf } from "./shelf-geometry";

const item = (mark: string, x_mm: number, y_mm: number, width_mm: number, depth_mm: number, is_round = false): FitItem => ({
  placement_id: mark, piece_id: null, mark, x_mm, y_mm, rotation_deg: 0, width_mm, depth_mm, is_round,
});
const level = (items: FitItem[], shape: "rect" | "round" = "rect", posts: FitLevel["posts"] = []): FitLevel => ({
  level: 1, shelf: { shape, width_mm: 560, depth_mm: 560, thickness_mm: 15 }, floor_mm: 25, height_mm: 150, room_left: { words: "room for 6 tiles", spots: [] }, items, posts,
});

describe("drawShelf", () => {
  it("keeps one scale for shelf, ware and posts", () => {
    const picture = drawShelf(level([item("T21", 0, 0, 160, 80)], "rect", [{ x_mm: 280, y_mm: 280 }]), { width: 284, px: 14 });

    expect(picture.scale).toBe(0.5);
    expect(picture.outline).toEqual({ kind: "rect", x: 2, y: 2, width: 280, height: 280 });
    expect(picture.pieces[0]?.shape).toEqual({ kind: "rect", x: 102, y: 122, width: 80, height: 40 });
    expect(picture.posts).toEqual([{ x: 282, y: 2 }]);
  });

  it("puts the front edge at the bottom", () => {
    const [front, back] = drawShelf(level([item("F", 0, -200, 60, 60), item("B", 0, 200, 60, 60)]), { width: 284, px: 14 }).pieces.map(({ shape }) => boxOf(shape));

    expect(front?.top).toBeGreaterThan(back?.bottom ?? Infinity);
  });

  it("draws what is round as round, on a round shelf", () => {
    const picture = drawShelf(level([item("J05", 100, 0, 120, 120, true)], "round"), { width: 284, px: 14 });

    expect(picture.outline).toEqual({ kind: "round", cx: 142, cy: 142, rx: 140, ry: 140 });
    expect(picture.pieces[0]?.shape).toEqual({ kind: "round", cx: 192, cy: 142, rx: 30, ry: 30 });
  });

  it("sets a mark inside, or beside with a line where the footprint is under 24 px", () => {
    const picture = drawShelf(level([item("T21", -100, 0, 160, 160), item("P02", 120, 120, 40, 40, true)]), { width: 284, px: 14 });
    const [tile, foot] = picture.pieces;

    expect(tile?.label?.line).toBeNull();
    expect(foot?.label?.line).not.toBeNull();
    expect(foot?.label?.x).toBeGreaterThan(boxOf(foot?.shape ?? picture.outline).right);
  });

  it("lets a mark go rather than lay it over other ware", () => {
    const crowd = [-1, 0, 1].flatMap((row) => [-1, 0, 1].map((column) => item(`LONG-${String(row)}${String(column)}`, column * 40, row * 40, 38, 38)));

    const middle = drawShelf(level(crowd), { width: 284, px: 14 }).pieces[4];

    expect(middle?.label).toBeNull();
  });

  it("draws room where it was counted, on the same scale", () => {
    const spots = [{ x_mm: 120, y_mm: 0, width_mm: 120, depth_mm: 120, is_round: true }];
    const picture = drawShelf({ ...level([item("J05", 0, 0, 120, 120, true)]), room_left: { words: "room for 1 jar", spots } }, { width: 284, px: 14 });

    expect(picture.room).toEqual([{ kind: "round", cx: 202, cy: 142, rx: 30, ry: 30 }]);
  });
});
