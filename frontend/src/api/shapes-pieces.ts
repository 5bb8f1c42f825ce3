/** What the piece, the racks and the clashes answer, under our own names; the shapes are generated from the server's OpenAPI. */
import type { Answered } from "./answered";
import type { components } from "./schema";

type Schemas = components["schemas"];

export type CoverState = Schemas["CoverInRequest"]["state"];
export type Feel = Schemas["TouchCheckInRequest"]["feel"];

export type Spot = Schemas["SpotOut"];
export type PieceBrief = Schemas["PieceBriefOut"];
export type PieceWhole = Schemas["PieceWholeOut"];
export type PartWhole = Schemas["PartWholeOut"];
export type Telling = Schemas["TellingOut"];
export type Caution = Schemas["WordOut"];
export type PieceAnswer = Schemas["PieceOut"];

export type Evidence = Schemas["EvidenceOut"];
export type Curve = Schemas["CurveOut"];
export type DryingAnswer = Schemas["DryingOut"];
export type DryingSumAsked = Schemas["DryingSumHereInRequest"];
export type DryingSum = Schemas["DryingSumHereOut"];
export type SupposedAsked = Schemas["SupposedInRequest"];
export type Supposed = Schemas["SupposedOut"];

export type PieceList = Schemas["PieceListOut"];
export type PlaceRow = Answered<Schemas["PlaceOut"]>;

export type ClashAct = Schemas["ClashActOut"];
export type ClashRow = Schemas["ClashOut"];
export type ClashAnswer = Schemas["ClashWholeOut"];
