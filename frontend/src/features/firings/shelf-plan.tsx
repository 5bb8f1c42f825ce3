/** The shelves of a load from the top one down, each drawn to scale from millimetres; what stands there, and what room is left. */
import type { FitAnswer, FitLevel } from "../../api/shapes-firings";
import { length, upperFirst } from "../../domain/format";
import { useSession } from "../common/session";
import { useBox } from "../common/use-box";
import css from "./pictures.module.css";
import draw from "../../ui/drawing.module.css";
import { drawShelf } from "./shelf-geometry";
import type { Footprint } from "./shelf-geometry";
import { levelName } from "./shelf-words";

export function ShelfPlans({ fit }: { fit: FitAnswer }) {
  const { units } = useSession().membership.member;
  const levels = [...fit.levels].sort((one, other) => other.level - one.level);
  const [first] = levels;
  if (first === undefined) return null;
  const { shelf } = first;
  const size = shelf.shape === "round" || shelf.width_mm === shelf.depth_mm ? length(shelf.width_mm, units) : `${length(shelf.width_mm, units)} by ${length(shelf.depth_mm, units)}`;
  const hasRoom = levels.some((level) => level.room_left.spots.length > 0);
  return (
    <div class={css.plans}>
      {levels.map((level) => <ShelfPlan key={level.level} level={level} of={levels.length} />)}
      <p class={`${draw.said ?? ""} ${css.scale ?? ""}`}>
        To scale, front edge below; each shelf {size}{shelf.shape === "round" ? " across" : ""}.{hasRoom ? " Dotted: room." : ""}
      </p>
    </div>
  );
}

function ShelfPlan({ level, of }: { level: FitLevel; of: number }) {
  const { ref, box: { width, rem } } = useBox<HTMLDivElement>();
  const picture = drawShelf(level, { width, px: Math.max(14, 0.875 * rem) });
  const name = levelName(level.level, of);
  const marks = level.items.map(({ mark }) => mark).join(", ") || "nothing yet";
  return (
    <figure class={css.plan}>
      <div ref={ref}>
        <svg class={draw.picture} viewBox={`0 0 ${String(picture.width)} ${String(picture.height)}`} height={picture.height} role="img" aria-label={`${name}: ${marks}.`}>
          <Shape shape={picture.outline} css={css.shelf} />
          {picture.room.map((shape, place) => <Shape key={place} shape={shape} css={css.room} />)}
          {picture.posts.map(({ x, y }) => <circle key={`${String(x)} ${String(y)}`} class={css.post} cx={x} cy={y} r={2.5} />)}
          {picture.pieces.map((piece) => <Shape key={piece.key} shape={piece.shape} css={css.ware} />)}
          {picture.pieces.map(({ key, label }) => label && (
            <g key={key}>
              {label.line && <path class={draw.edge} d={label.line} />}
              <text class={`${draw.mark ?? ""} ${draw.middle ?? ""}`} x={label.x} y={label.y}>{label.words}</text>
            </g>
          ))}
        </svg>
      </div>
      <figcaption><b>{name}</b>{level.room_left.words ? upperFirst(level.room_left.words) : level.items.length > 0 ? "Room left: not counted" : "Empty"}</figcaption>
    </figure>
  );
}

function Shape({ shape, css: style }: { shape: Footprint; css: string | undefined }) {
  return shape.kind === "rect"
    ? <rect class={style} x={shape.x} y={shape.y} width={shape.width} height={shape.height} />
    : <ellipse class={style} cx={shape.cx} cy={shape.cy} rx={shape.rx} ry={shape.ry} />;
}
