/** The papers of an order: what is in them, what is missing, a draft to print, and the owner's signature. */
import { useState } from "preact/hooks";
import type { PapersFacts } from "../../api/shapes-orders";
import { date } from "../../domain/clock";
import { Act, Choice, Field, MainAct } from "../../ui/act";
import { Tray } from "../../ui/frame";
import { Block, Fact, Row } from "../../ui/seam";
import { Screen } from "../common/screen";
import { useZone } from "../common/session";
import { useNow } from "../common/use-now";
import { WhenHeard } from "../common/when-heard";
import css from "./papers.module.css";
import { CONTACTS, evidenceOf, natchOf, PEOPLE, shallowUnknown, STATES } from "./papers-words";
import type { People } from "./papers-words";
import { usePapers, usePapersScreen } from "./use-papers";
import type { Inside, Papers } from "./use-papers";

const HOME = "/orders";

export function PapersScreen({ id = "" }: { id?: string }) {
  const screen = usePapersScreen(id);
  return <WhenHeard title="Papers" within={HOME} screen={screen}>{(facts, heardAt) => <Ready key={id} id={id} facts={facts} again={screen.again} heardAt={heardAt} />}</WhenHeard>;
}

function Ready({ id, facts, again, heardAt }: { id: string; facts: PapersFacts; again: () => void; heardAt: Date | null }) {
  const papers = usePapers(id, again);
  switch (papers.sheet.kind) {
    case "sign":
      return <SignSheet facts={facts} papers={papers} />;
    case "depth":
      return <DepthSheet design={papers.sheet.design} number={facts.number} papers={papers} />;
    case "none":
      return <PapersOf id={id} facts={facts} papers={papers} heardAt={heardAt} />;
  }
}

function PapersOf({ id, facts, papers, heardAt }: { id: string; facts: PapersFacts; papers: Papers; heardAt: Date | null }) {
  const now = useNow();
  const zone = useZone();
  const state = STATES[facts.state];
  const unknown = shallowUnknown(facts.pieces);
  return (
    <Screen title="Papers" when={facts.number} within={HOME} heardAt={heardAt} tray={<PapersTray id={id} facts={facts} papers={papers} />}>
      <Block name="Use with food">
        <li><Fact label="now" natch={facts.state === "not_declared" ? "hand" : "done"} value={state.words} note={state.note} /></li>
        {facts.state === "not_declared" && facts.missing.length > 0 && <li><Fact label="missing" value={facts.missing[0]} note={facts.missing.length > 1 ? `and ${String(facts.missing.length - 1)} more: each piece says which` : undefined} /></li>}
        {unknown.map((design) => (
          <li key={design.id}>
            <Fact label="design" value={design.name} note="nobody said how deep it is inside">
              <Act spoken={`How deep is ${design.name}?`} onPress={() => { papers.open({ kind: "depth", design }); }}>How deep…</Act>
            </Fact>
          </li>
        ))}
      </Block>
      <Block name="Pieces" count={facts.pieces.length}>
        {facts.pieces.map((piece) => (
          <Row key={piece.piece_id} mark={piece.mark} natch={natchOf(piece)} verdict={piece.coverage.words} evidence={evidenceOf(piece)} spoken={`${piece.mark}: ${piece.coverage.words}`} href={`/pieces/${piece.piece_id}`} />
        ))}
      </Block>
      {facts.materials.length > 0 && (
        <Block name="What is in the colours">
          {facts.materials.map(({ what, caution }) => <li key={what}><Fact label="mind" value={what} note={caution} /></li>)}
        </Block>
      )}
      <Block name="Signed" count={facts.kept.length} note={facts.told_since > 0 ? `${String(facts.told_since)} told since; a new draft has them` : undefined}>
        {facts.kept.map((copy) => (
          <li key={copy.id}>
            <Fact
              label={date(new Date(copy.signed_at), now, zone)} natch="done" value={`${copy.is_declared ? "Declared for food" : "Not declared"} · ${copy.signed_by}`}
              note={`sha256 ${copy.sha256.slice(0, 12)}…`}
            >
              {facts.may.print && <Act spoken={`Open the papers signed ${date(new Date(copy.signed_at), now, zone)}`} onPress={() => { papers.print(copy.id); }}>Open</Act>}
            </Fact>
          </li>
        ))}
        <li><Fact label="" value="History, use with food, care, what is in the colours" note="Natch keeps what was written and signed; it does not certify" /></li>
      </Block>
    </Screen>
  );
}

function PapersTray({ id, facts, papers }: { id: string; facts: PapersFacts; papers: Papers }) {
  if (!facts.may.print && !facts.may.sign) return <Tray reason="the order’s maker prints them, the owner signs"><Act href={`/orders/${id}`}>To the order</Act></Tray>;
  return (
    <Tray>
      <MainAct isDisabled={!facts.may.print} wide="Make the papers" onPress={() => { papers.print(); }}>Make the papers</MainAct>
      {facts.may.sign && <Act spoken={`Sign the papers of ${facts.number}`} onPress={() => { papers.open({ kind: "sign" }); }}>Sign…</Act>}
      {facts.may.print && <Act spoken="Write down a test report" href={`/reports/new?order=${id}`}>Report…</Act>}
    </Tray>
  );
}

function SignSheet({ facts, papers }: { facts: PapersFacts; papers: Papers }) {
  const [people, choose] = useState<People>("initials");
  const mayDeclare = facts.state !== "display" && facts.missing.length === 0;
  const [declares, declare] = useState(false);
  const { isAsking, wrong } = papers.claim;
  const tray = (
    <Tray>
      <MainAct isDisabled={isAsking} onPress={() => void papers.sign({ people, declares })}>{isAsking ? "Asking" : "Sign"}</MainAct>
      <Act onPress={() => { papers.open({ kind: "none" }); }}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title="Sign" when={facts.number} within={HOME} isSeam={false} tray={tray}>
      <div class={css.stack}>
        <p>Signed papers are kept to the letter, with the day and a digest. What is told later stands beside them.</p>
        {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
        <Choice legend="Makers are named by" name="people" options={PEOPLE} chosen={people} onChoose={choose} />
        {mayDeclare
          ? (
            <Choice
              legend="Use with food" name="declares" chosen={declares ? "yes" : "no"} onChoose={(value) => { declare(value === "yes"); }}
              options={[{ value: "no", words: "Not declared" }, { value: "yes", words: "Declared for food", note: "by the reports in these papers; whoever signs answers for it" }]}
            />
          )
          : (
            <>
              <p class={css.note}>{facts.state === "display" ? "For display only: nothing is declared." : "Not declared for food, since this is missing:"}</p>
              {facts.state !== "display" && <ul class={css.lines}>{facts.missing.map((line) => <li key={line}>{line}</li>)}</ul>}
            </>
          )}
      </div>
    </Screen>
  );
}

function DepthSheet({ design, number, papers }: { design: { id: string; name: string }; number: string; papers: Papers }) {
  const [inside, set] = useState<Inside>({ depth: "", capacity: "", contact: "table" });
  const { isAsking, wrong, wrongAt } = papers.claim;
  const tray = (
    <Tray>
      <MainAct isDisabled={isAsking} onPress={() => void papers.measure(design.id, inside)}>{isAsking ? "Asking" : "Keep"}</MainAct>
      <Act onPress={() => { papers.open({ kind: "none" }); }}>Not now</Act>
    </Tray>
  );
  return (
    <Screen title={design.name} when={number} within={HOME} isSeam={false} tray={tray}>
      <div class={css.stack}>
        <p>As finished. Up to 25 mm deep counts as flat; deeper ware goes by the litre.</p>
        {wrong && <p class={css.wrong} role="alert">{wrong}</p>}
        <Choice legend="What it is for" name="contact" options={CONTACTS} chosen={inside.contact} onChoose={(contact) => { set({ ...inside, contact }); }} />
        <Field label="Depth inside, mm" name="inside_depth_mm" inputMode="decimal" value={inside.depth} onType={(depth) => { set({ ...inside, depth }); }} wrong={wrongAt("#/inside_depth_mm")} />
        <Field label="Holds to the brim, ml" name="capacity_ml" inputMode="decimal" value={inside.capacity} onType={(capacity) => { set({ ...inside, capacity }); }} wrong={wrongAt("#/capacity_ml")} />
      </div>
    </Screen>
  );
}
