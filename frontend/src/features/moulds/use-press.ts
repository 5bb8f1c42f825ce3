import { useRef, useState } from "preact/hooks";
import type { Page } from "../../api/pages";
import type { BlockRow, DesignRow } from "../../api/shapes-moulds";
import type { PieceBrief, PieceList } from "../../api/shapes-pieces";
import { uuid7 } from "../../offline/ids";
import { useSession } from "../common/session";
import { useKeptActs } from "../common/use-outbox";
import { useSaid } from "../common/use-said";
import type { Saying } from "../common/use-said";
import { useWholeList } from "../common/use-screen";
import { overlaidPieces } from "../pieces/racks-view";
import { lastPresses } from "./last-press";
import { pressBefore, pressingFields, targetsOf, waitingFor, withoutPressed } from "./press-plan";
import type { Before, Made, Target } from "./press-plan";
import type { MouldNow } from "./use-mould";
import { useNumbers } from "./use-numbers";

export interface Press {
  blocks: readonly BlockRow[];
  blockId: string | null;
  chooseBlock: (id: string) => void;
  partIds: ReadonlySet<string>;
  togglePart: (id: string) => void;
  count: number;
  setCount: (count: number) => void;
  waiting: readonly PieceBrief[];
  forId: string | null;
  chooseFor: (id: string | null) => void;
  targets: readonly Target[];
  /** No number is left on this phone: the mark is typed as it is cut. */
  wantsMark: boolean;
  typedMark: string;
  typeMark: (mark: string) => void;
  /** What was pressed a little ago, while it is asked whether another is meant. */
  before: Before | null;
  saying: Saying;
  press: () => void;
  another: () => void;
  notAnother: () => void;
}

/** The block last pressed from on this phone is the likeliest; else the newest laid. */
function likelyBlock(blocks: readonly BlockRow[]): string | null {
  return [...blocks].sort((one, other) => (other.laid_on ?? "").localeCompare(one.laid_on ?? ""))[0]?.id ?? null;
}

export function usePress({ set, readiness }: MouldNow): Press {
  const designs = useWholeList<Page<DesignRow>>("designs/", { every_s: 600 });
  const blockList = useWholeList<Page<BlockRow>>("slab-blocks/", { every_s: 600 });
  const pieces = useWholeList<PieceList>("pieces/");
  const acts = useKeptActs();
  const said = useSaid(readiness.journal_seq);
  const { phone, membership } = useSession();
  const pressed = lastPresses(phone.db, membership.member.id);
  const saying: Saying = { ...said, undo: () => { void pressed.forget(set.id); said.undo(); } };
  const [blockId, chooseBlock] = useState<string | null>(null);
  const [leftOut, leaveOut] = useState<ReadonlySet<string>>(new Set());
  const [count, setCount] = useState(1);
  const [chosenFor, setFor] = useState<string | null | undefined>(undefined);
  const [typedMark, typeMark] = useState("");
  const [before, askAgainst] = useState<Before | null>(null);
  const isPressing = useRef(false);

  const design = designs.state === "ready" ? designs.value.results.find((one) => one.id === set.makes.design_id) : undefined;
  const numbers = useNumbers(design?.series ?? null);
  const blocks = blockList.state === "ready" ? blockList.value.results.filter((block) => block.used_up_at === null) : [];
  const heard = pieces.state === "ready" ? overlaidPieces(pieces.value.results, pieces.value.journal_seq, acts) : [];
  const waiting = withoutPressed(waitingFor(heard, set.makes), acts, set.makes.role);
  // Undefined: nobody chose yet, so the first that waits; null: a new piece was chosen.
  const forId = chosenFor === undefined || (chosenFor !== null && !waiting.some((piece) => piece.id === chosenFor)) ? waiting[0]?.id ?? null : chosenFor;
  const marks = numbers.marks(count);
  const lent = targetsOf(waiting, forId, marks, count);
  const wantsMark = lent.length < count && numbers.isKnown;
  const typed = typedMark.trim();
  const targets = wantsMark && typed !== "" ? [...lent, { pieceId: null, mark: typed }].slice(0, count) : lent;
  const mouldPartIds = set.parts.map((part) => part.id).filter((id) => !leftOut.has(id));
  const block = blockId ?? likelyBlock(blocks);

  const send = async (): Promise<void> => {
    const { casting } = set;
    if (casting === null || targets.length < count || mouldPartIds.length === 0 || saying.isDead) return;
    const wanted = targets.filter((target) => target.pieceId === null).length;
    const cut = await numbers.take(wanted - (wantsMark && typed !== "" ? 1 : 0));
    const fresh = [...cut, typed];
    const made: Made[] = targets.map((target) => ({
      partId: uuid7(), pieceId: target.pieceId ?? uuid7(), isNew: target.pieceId === null, mark: target.pieceId === null ? fresh.shift() ?? target.mark : target.mark,
    }));
    const words = made.map((one) => one.mark).join(", ");
    const id = await saying.say({
      path: `mould-sets/${set.id}/pressings/`,
      fields: pressingFields({ castingId: casting.id, mouldPartIds, slabBlockId: block, role: set.makes.role, designId: set.makes.design_id }, made),
      basedOn: readiness.journal_seq,
      verb: "pressed",
      about: { set_id: set.id, role: set.makes.role, piece_ids: made.map((one) => one.pieceId).join(" "), marks: words },
      words: `${set.label}: pressed ${words}`,
      creates: made.flatMap((one) => (one.isNew ? [one.pieceId, one.partId] : [one.partId])),
    }, `Pressed ${words}`);
    if (id !== null) await pressed.remember(set.id, { id, marks: words, count: made.length, at: new Date() });
    setFor(undefined);
    typeMark("");
    askAgainst(null);
  };
  const press = async (): Promise<void> => {
    // A thumb that bounces while the phone still looks up what it pressed last means one press.
    if (isPressing.current) return;
    isPressing.current = true;
    try {
      const last = pressBefore(acts, await pressed.of(set.id), set.id, Date.now());
      if (last === null) await send();
      else askAgainst(last);
    } finally {
      isPressing.current = false;
    }
  };
  const togglePart = (id: string): void => {
    const next = new Set(leftOut);
    if (!next.delete(id)) next.add(id);
    leaveOut(next);
  };
  return {
    blocks, blockId: block, chooseBlock, partIds: new Set(mouldPartIds), togglePart, count, setCount, waiting, forId, chooseFor: setFor,
    targets, wantsMark, typedMark, typeMark, before, saying,
    press: () => { void press(); },
    another: () => { void send(); },
    notAnother: () => { askAgainst(null); },
  };
}
