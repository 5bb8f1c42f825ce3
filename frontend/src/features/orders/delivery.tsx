/** The delivery drawing: the days on which the order is likely ready, against the day that was promised. */
import type { OrderWhole, OutlookAnswer } from "../../api/shapes-orders";
import { date } from "../../domain/clock";
import { useZone } from "../common/session";
import { useBox } from "../common/use-box";
import { drawDelivery } from "./delivery-geometry";
import type { Delivery, DeliveryPicture } from "./delivery-geometry";
import css from "./drawings.module.css";
import draw from "../../ui/drawing.module.css";
import { noonOf } from "../../domain/wall";
import { isAllThere, likelyWords, promisedWords } from "./order-words";
import type { Around } from "./order-words";

/** The outlook where it was heard, else the last judgement of the order itself. */
export function deliveryOf(order: OrderWhole, outlook: OutlookAnswer | null): Delivery {
  return {
    promised: order.promised_date,
    likelyFrom: outlook ? outlook.likely_from : order.likely_from,
    likelyMiddle: outlook?.likely_middle ?? null,
    likelyUntil: outlook ? outlook.likely_until : order.likely_until,
  };
}

export function DeliveryDrawing({ order, outlook, now }: { order: OrderWhole; outlook: OutlookAnswer | null; now: Date }) {
  const zone = useZone();
  const { ref, box } = useBox<HTMLDivElement>();
  const delivery = deliveryOf(order, outlook);
  const picture = drawDelivery(delivery, { ...box, now, zone });
  const isLate = delivery.promised !== null && delivery.likelyUntil !== null && delivery.likelyUntil > delivery.promised;
  return (
    <div class={draw.box}>
      <div ref={ref}>{picture && <Picture picture={picture} />}</div>
      <p class={isLate ? css.saidLive : draw.said}>{isAllThere(outlook) ? "All that was wanted is finished." : deliverySentence(delivery, { now, zone })}</p>
      {picture && <Figures delivery={delivery} outlook={outlook} now={now} />}
    </div>
  );
}

/** `Likely Fri 4 to Sat 12 Dec, promised Fri 18 Dec.` */
function deliverySentence({ promised, likelyFrom, likelyUntil }: Delivery, around: Around): string {
  const range = likelyWords(likelyFrom, likelyUntil, around.zone);
  const day = promised === null ? "no day promised" : `promised ${promisedWords(promised, around)}`;
  return `${range === null ? "No likely days yet" : `Likely ${range}`}, ${day}.`;
}

function Picture({ picture }: { picture: DeliveryPicture }) {
  const { width, height, baseY, left, right, box, flag } = picture;
  return (
    <svg class={draw.picture} viewBox={`0 0 ${String(width)} ${String(height)}`} height={height} role="img" aria-label="The likely days of delivery against the promised day; the figures stand in the table under it.">
      <defs>
        <pattern id="delivery-hatch" patternUnits="userSpaceOnUse" width="5" height="5" patternTransform="rotate(45)"><path class={draw.hatch} d="M0 0v5" /></pattern>
      </defs>
      {box && (
        <>
          <rect class={draw.likely} fill="url(#delivery-hatch)" x={box.left} y={baseY - 13} width={box.right - box.left} height={13} />
          {box.tick !== null && <path class={draw.tick} d={`M${String(box.tick)} ${String(baseY - 17)}v17`} />}
          <text class={draw.strong} text-anchor={box.label.anchor} x={box.label.x} y={box.label.y}>{box.label.words}</text>
        </>
      )}
      <path class={draw.line} d={`M${String(left)} ${String(baseY)}H${String(right)}`} />
      {picture.ticks.map(({ x, label }) => (
        <g key={x}>
          <path class={draw.line} d={`M${String(x)} ${String(baseY)}v6`} />
          <text text-anchor={label.anchor} x={label.x} y={label.y}>{label.words}</text>
        </g>
      ))}
      {flag && (
        <>
          <path class={draw.pole} d={`M${String(flag.x)} ${String(baseY)}v-21`} />
          <path class={draw.natch} d={`M${String(flag.x)} ${String(baseY - 21)}a8 8 0 0 1 0 16z`} />
          <text class={draw.promise} text-anchor={flag.label.anchor} x={flag.label.x} y={flag.label.y}>{flag.label.words}</text>
        </>
      )}
    </svg>
  );
}

function Figures({ delivery, outlook, now }: { delivery: Delivery; outlook: OutlookAnswer | null; now: Date }) {
  const zone = useZone();
  const middle = noonOf(delivery.likelyMiddle, zone);
  return (
    <details class={draw.details}>
      <summary>as figures</summary>
      <table class={draw.table}>
        <tbody>
          <tr><th scope="row">promised</th><td>{promisedWords(delivery.promised, { now, zone })}</td></tr>
          <tr><th scope="row">likely, 4 in 5</th><td>{likelyWords(delivery.likelyFrom, delivery.likelyUntil, zone) ?? "not reckoned yet"}</td></tr>
          {middle && <tr><th scope="row">middle guess</th><td>{date(middle, now, zone)}</td></tr>}
          {outlook && <tr><th scope="row">rests on</th><td>{outlook.basis_words}</td></tr>}
          {outlook?.parts.map((part) => <tr key={part.role}><th scope="row">parts</th><td>{part.words}</td></tr>)}
          {outlook && <tr><th scope="row">first firing</th><td>{outlook.first_time.words}</td></tr>}
          {outlook?.lines.flatMap((line) => line.latest_press.map((press) => (
            <tr key={`${line.line_id}${String(press.confidence)}`}><th scope="row">{line.what}: last day to press</th><td>{press.words}</td></tr>
          )))}
        </tbody>
      </table>
      {outlook && outlook.sources.length > 0 && <ul>{outlook.sources.map((source) => <li key={source}>{source}</li>)}</ul>}
    </details>
  );
}
