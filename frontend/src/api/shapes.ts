/** What the server answers, under our own names; the shapes themselves are generated from its OpenAPI. */
import type { components } from "./schema";

type Schemas = components["schemas"];

/** A person who signed in by name, or the shared phone under the name its outbox has. */
export type Me = Omit<Schemas["MeOut"], "username" | "device"> & { username: string };
export type SharedPerson = Schemas["HolderOut"];
export type SharedStudio = Schemas["MyStudioOut"];
/** What *me* answers a shared phone: who may pick it up, and what the one may do who has. */
export type SharedMe = Schemas["MeOut"];
export type Membership = Schemas["MembershipOut"];

export type Quantiles = Schemas["QuantilesOut"];
export type Window = Schemas["WindowOut"];
export type Basis = Schemas["ConfidenceOut"];
export type PieceRef = Schemas["PieceNamedOut"];
export type PartRef = Schemas["PartNamedOut"];
export type PlaceRef = Schemas["PlaceNamedOut"];
export type PersonRef = Schemas["PersonNamedOut"];

export type BenchAnswer = Schemas["BenchOut"];
export type BenchRow = Schemas["BenchRowOut"];
export type JoinRow = Schemas["JoinRowOut"];
export type MouldRow = Schemas["PressRowOut"];

/** Every screen's answer says when it was drawn and how far the journal had come. */
export type Snapshot = Pick<BenchAnswer, "at" | "journal_seq">;
