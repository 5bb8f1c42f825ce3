/** What a search answers. */
import type { components } from "./schema";

type Schemas = components["schemas"];

export type FindAnswer = Schemas["SearchOut"];
export type Hit = Schemas["HitOut"];
