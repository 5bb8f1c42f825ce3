/** One piece: where it stands, what is coming, its parts, what to mind, and its story. */
import type { PieceAnswer } from "../../api/shapes-pieces";
import { upperFirst } from "../../domain/format";
import { Act } from "../../ui/act";
import { StageMark } from "../../ui/marks";
import { Block, Fact } from "../../ui/seam";
import { Standing } from "../../ui/standing";
import { Cautions } from "../common/cautions";
import { Photos } from "../common/photos";
import { SaidLine } from "../common/said-line";
import { Screen } from "../common/screen";
import { useSession, useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import { coveringFacts } from "./covering-words";
import { DryingCurve, DryingSentence } from "./drying-curve";
import { evidenceFacts, weighedFacts } from "./drying-words";
import { PieceSheet } from "./piece-sheets";
import css from "./piece.module.css";
import { PieceStory } from "./piece-story";
import { PieceTray } from "./piece-tray";
import { coming, partWords, standing, titleNote } from "./piece-words";
import { markOf } from "./stage";
import { usePiece, usePieceScreen } from "./use-piece";
import type { Piece } from "./use-piece";

const HOME = "/racks";
/** Warnings that ask somebody to do something; the others only want to be known. Two stories have a way of their own. */
const WANTS_A_HAND: ReadonlySet<string> = new Set(["damaged", "interrupted-bisque"]);

export function PieceScreen({ id = "" }: { id?: string }) {
  const screen = usePieceScreen(id);
  return <WhenHeard title="Piece" within={HOME} screen={screen}>{(value, heardAt) => <Ready key={id} snapshot={value} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ snapshot, heardAt }: { snapshot: PieceAnswer; heardAt: Date | null }) {
  const zone = useZone();
  const now = useNow();
  const piece = usePiece(snapshot);
  const { view: { answer, kept }, drying, saying } = piece;
  const { mark, state, cover, clash_id } = answer.piece;
  if (!["none", "weigh", "cover", "touch", "grade"].includes(piece.sheet)) return <PieceSheet piece={piece} />;
  const { verdict, evidence } = standing(answer, drying, { now, zone });
  return (
    <Screen title={mark} when={titleNote(answer)} within={HOME} heardAt={heardAt} tray={<PieceTray piece={piece} />}>
      <SaidLine mark={mark} saying={saying} />
      <Standing drawing={<StageMark name={markOf(state, cover)} />} verdict={verdict} evidence={evidence} />
      <LatestPhoto answer={answer} />
      {clash_id !== null && (
        <Fact label="" natch="two" value="Two stories"><a href={`/clashes/${clash_id}`} class={css.way}>Say which stands</a></Fact>
      )}
      <Coming piece={piece} now={now} zone={zone} />
      <Parts piece={piece} now={now} zone={zone} />
      {answer.order && <Fact label="for"><a class={css.way} href={`/orders/${answer.order.commission_id}`}>{`${answer.order.number}, ${answer.order.what}`}</a></Fact>}
      <div class={css.more}><Act onPress={() => { piece.open("more"); }}>Something else…</Act></div>
      <PieceStory answer={answer} kept={kept} now={now} />
    </Screen>
  );
}

function LatestPhoto({ answer: { photo_ids, piece } }: { answer: PieceAnswer }) {
  if (photo_ids.length === 0) return null;
  const note = photo_ids.length > 1 ? `latest of ${String(photo_ids.length)}` : undefined;
  return <Fact label="photo" note={note}><Photos ids={photo_ids.slice(0, 1)} of={`of ${piece.mark}`} /></Fact>;
}

function Coming({ piece: { view: { answer }, drying }, now, zone }: { piece: Piece; now: Date; zone: string }) {
  const { units } = useSession().membership.member;
  const next = coming(answer, drying, { now, zone });
  const isDrying = answer.piece.state === "drying" && drying !== null;
  const facts = isDrying ? [...evidenceFacts(drying.evidence, units, now, zone), ...weighedFacts(drying)] : [];
  const covering = drying === null ? [] : coveringFacts(drying.covering, now, zone);
  return (
    <div class={css.coming}>
      {isDrying && <DryingCurve drying={drying} now={now} />}
      <div>
        {next && <Fact label={next.label} natch="next" value={next.value} note={next.note} />}
        {[...covering, ...facts].map((fact) => <Fact key={fact.label} {...fact} />)}
        {answer.waits_for && <Fact label="waits for" value={upperFirst(answer.waits_for)} />}
        {answer.warnings.filter((warning) => WANTS_A_HAND.has(warning.code)).map((warning) => <Fact key={warning.code} label="mind" natch="hand" value={warning.detail} />)}
        <Cautions words={[...answer.warnings.filter((warning) => !WANTS_A_HAND.has(warning.code)), ...answer.cautions].map((caution) => caution.detail)} />
      </div>
      {isDrying && <DryingSentence drying={drying} now={now} />}
    </div>
  );
}

function Parts({ piece: { view: { answer } }, now, zone }: { piece: Piece; now: Date; zone: string }) {
  const { parts, piece, partners } = answer;
  return (
    <Block name={parts.length === 1 ? "Part" : "Parts"} count={parts.length}>
      {parts.map((part) => {
        const { key, role, words, mould, setId } = partWords(part, { now, zone }, !["pressing", "assembly"].includes(piece.stage));
        return (
          <li key={key}>
            <Fact label={role} value={words} note={setId ? undefined : mould}>
              {setId && <a class={css.way} href={`/moulds/${setId}`}>{mould}</a>}
            </Fact>
          </li>
        );
      })}
      {piece.missing_roles.map((role) => <li key={role}><Fact label={role} natch="next" value="To press" /></li>)}
      {partners.map((other) => (
        <li key={other.id}>
          <Fact label={other.noun} value={upperFirst(other.state_words)}><a class={css.way} href={`/pieces/${other.id}`}>{other.mark}, stands with it</a></Fact>
        </li>
      ))}
    </Block>
  );
}
