/** What orders, their history, what stands together, and found ware answer. */
import type { components } from "./schema";

type Schemas = components["schemas"];

export type OrdersAnswer = Schemas["CommissionListOut"];
export type OrderRow = Schemas["CommissionRowOut"];
/** Sets, but what ends in `pieces`. Finished sets are among those alive, delivered ones too; planned and in doubt are not. */
export type OrderCounts = Schemas["OrderCountsOut"];
export type Use = OrderRow["use"];

export type OrderAnswer = Schemas["CommissionOut"];
export type OrderWhole = Schemas["CommissionWholeOut"];
export type OrderLine = Schemas["OrderLineOut"];
export type OrderPiece = Schemas["OrderPieceOut"];
export type Partner = Schemas["PartnerOut"];
export type TestReport = Schemas["TestReportOut"];

export type OrderTold = Schemas["OrderToldOut"];
export type ToldKind = OrderTold["kind"];

export type OutlookAnswer = Schemas["OutlookOut"];
export type Outlook = Schemas["OutlookLineOut"];

export type LivesAnswer = Schemas["CommissionLivesOut"];
export type PieceLife = Schemas["PieceLifeOut"];
/** Where a piece stood, from when to when; null is until now. */
export type LifeSpan = Schemas["StayOut"];

export type FoundRow = Schemas["FoundOut"];
export type FoundWhole = Schemas["FoundWholeOut"];
export type FoundOwner = Schemas["LikelyOwnerOut"];
export type FoundClaim = Schemas["ClaimOut"];
export type Looks = Schemas["FoundInRequest"]["looks"];

export type PapersFacts = Schemas["PapersFactsOut"];
export type PieceFood = Schemas["PieceFoodOut"];
export type SignedPapers = Schemas["SignedPapersOut"];
export type GlazeBatch = Required<Schemas["GlazeBatchOut"]>;
export type JudgedReport = Schemas["JudgedReportOut"];

export type ApprovalsAnswer = Schemas["ApprovalListOut"];
export type Approval = Schemas["ApprovalOut"];
export type ApprovalSaid = Schemas["ApprovalAnswerOut"];
export type LinksAnswer = Schemas["OrderLinkListOut"];
export type OrderLink = Schemas["OrderLinkOut"];
export type LinkMade = Schemas["LinkMadeOut"];
export type LinkPreview = Schemas["LinkPreviewOut"];
export type LinkWanted = Schemas["LinkPreviewInRequest"];
