/** Where everything of a shelf plan stands, in pixels of its own box: true scale from millimetres, front edge at the bottom. */
import type { FitItem, FitLevel } from "../../api/shapes-firings";

/** A footprint narrower than this has its mark beside it. [px] */
const LEAST_INSIDE_PX = 24;
/** About how wide a figure or capital is for its height, at the width the marks are set in. */
const LETTER = 0.56;
const EDGE_PX = 2;

export type Footprint =
  | { kind: "rect"; x: number; y: number; width: number; height: number }
  | { kind: "round"; cx: number; cy: number; rx: number; ry: number };

export interface ShelfLabel {
  x: number;
  y: number;
  words: string;
  /** From the footprint to a mark that stands beside it. */
  line: string | null;
}

export interface ShelfPiece {
  key: string;
  placementId: string | null;
  shape: Footprint;
  label: ShelfLabel | null;
}

export interface ShelfPicture {
  width: number;
  height: number;
  /** Pixels to a millimetre. */
  scale: number;
  outline: Footprint;
  pieces: ShelfPiece[];
  /** What more stands there, in the shape it was counted in. */
  room: Footprint[];
  posts: { x: number; y: number }[];
}

/** A footprint by its middle from the middle of the shelf. [mm] */
export interface Stand {
  x_mm: number;
  y_mm: number;
  width_mm: number;
  depth_mm: number;
  is_round: boolean;
}

interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

const round = (pixel: number): number => Math.round(pixel * 10) / 10;

function placed({ x_mm, y_mm, width_mm, depth_mm, is_round }: Stand, middle: { x: number; y: number }, scale: number): Footprint {
  // The back of the shelf lies up the picture, where an image counts downwards.
  const [cx, cy] = [middle.x + x_mm * scale, middle.y - y_mm * scale];
  const [width, height] = [width_mm * scale, depth_mm * scale];
  if (is_round) return { kind: "round", cx: round(cx), cy: round(cy), rx: round(width / 2), ry: round(height / 2) };
  return { kind: "rect", x: round(cx - width / 2), y: round(cy - height / 2), width: round(width), height: round(height) };
}

export function boxOf(shape: Footprint): Box {
  return shape.kind === "rect"
    ? { left: shape.x, right: shape.x + shape.width, top: shape.y, bottom: shape.y + shape.height }
    : { left: shape.cx - shape.rx, right: shape.cx + shape.rx, top: shape.cy - shape.ry, bottom: shape.cy + shape.ry };
}

function meet(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

export interface ShelfOptions {
  /** The width of the whole picture. [px] */
  width: number;
  /** The height of a mark. [px] */
  px: number;
}

export function drawShelf(level: FitLevel, { width, px }: ShelfOptions): ShelfPicture {
  const { shelf } = level;
  const scale = (width - 2 * EDGE_PX) / shelf.width_mm;
  const height = round(shelf.depth_mm * scale + 2 * EDGE_PX);
  const middle = { x: width / 2, y: height / 2 };
  const outline = placed({ x_mm: 0, y_mm: 0, width_mm: shelf.width_mm, depth_mm: shelf.depth_mm, is_round: shelf.shape === "round" }, middle, scale);
  const shapes = level.items.map((item) => placed(item, middle, scale));
  const boxes = shapes.map(boxOf);
  const taken: Box[] = [...boxes];
  const pieces = level.items.map((item, place) => {
    const shape = shapes[place] ?? outline;
    const label = labelOf(item.mark, boxOf(shape), { width, height, px, taken });
    return { key: keyOf(item, place), placementId: item.placement_id, shape, label };
  });
  return {
    width, height, scale, outline, pieces,
    room: level.room_left.spots.map((spot) => placed(spot, middle, scale)),
    posts: level.posts.map(({ x_mm, y_mm }) => ({ x: round(middle.x + x_mm * scale), y: round(middle.y - y_mm * scale) })),
  };
}

function keyOf(item: FitItem, place: number): string {
  return `${item.placement_id ?? item.piece_id ?? "thing"}-${String(place)}`;
}

interface Around {
  width: number;
  height: number;
  px: number;
  taken: Box[];
}

/** Inside where it fits, else beside with a line, else nowhere: the list under the plan names it all the same. */
function labelOf(words: string, box: Box, { width, height, px, taken }: Around): ShelfLabel | null {
  const long = words.length * LETTER * px;
  const [cx, cy] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  const isWide = Math.min(box.right - box.left, box.bottom - box.top) >= LEAST_INSIDE_PX && box.right - box.left >= long + 4;
  if (isWide) return { x: round(cx), y: round(cy + px * 0.36), words, line: null };
  const gap = px / 2;
  const spots = [
    { x: box.right + gap + long / 2, y: cy, from: { x: box.right, y: cy }, to: { x: box.right + gap - 2, y: cy } },
    { x: box.left - gap - long / 2, y: cy, from: { x: box.left, y: cy }, to: { x: box.left - gap + 2, y: cy } },
    { x: cx, y: box.bottom + gap + px / 2, from: { x: cx, y: box.bottom }, to: { x: cx, y: box.bottom + gap } },
    { x: cx, y: box.top - gap - px / 2, from: { x: cx, y: box.top }, to: { x: cx, y: box.top - gap } },
  ];
  for (const { x, y, from, to } of spots) {
    const own = { left: x - long / 2, right: x + long / 2, top: y - px / 2, bottom: y + px / 2 };
    const isIn = own.left >= EDGE_PX && own.right <= width - EDGE_PX && own.top >= EDGE_PX && own.bottom <= height - EDGE_PX;
    if (!isIn || taken.some((other) => meet(own, other))) continue;
    taken.push(own);
    return { x: round(x), y: round(y + px * 0.36), words, line: `M${String(round(from.x))} ${String(round(from.y))}L${String(round(to.x))} ${String(round(to.y))}` };
  }
  return null;
}
