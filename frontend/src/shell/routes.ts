/** The route table: one line for each screen, each its own chunk. A line with a `place` is a word in the place bar. */
import type { ComponentType } from "preact";
import { lazy } from "preact-iso";

export interface ScreenRoute {
  /** As preact-iso reads it: `/pieces/:id`. The screen gets the parameters as properties. */
  path: string;
  place?: string;
  screen: ComponentType<{ id?: string }>;
}

export const ROUTES: readonly ScreenRoute[] = [
  { path: "/bench", place: "Bench", screen: lazy(async () => (await import("../features/pieces/bench")).BenchScreen) },
  { path: "/racks", place: "Racks", screen: lazy(async () => (await import("../features/pieces/racks")).RacksScreen) },
  { path: "/racks/:id", screen: lazy(async () => (await import("../features/pieces/shelf")).ShelfScreen) },
  { path: "/kilns", place: "Kilns", screen: lazy(async () => (await import("../features/firings/kilns")).KilnsScreen) },
  { path: "/kilns/weeks", screen: lazy(async () => (await import("../features/firings/weeks")).WeeksScreen) },
  { path: "/kilns/waiting", screen: lazy(async () => (await import("../features/firings/waiting")).WaitingWareScreen) },
  { path: "/kilns/new", screen: lazy(async () => (await import("../features/firings/write-kiln")).NewKilnScreen) },
  { path: "/kilns/:id/book", screen: lazy(async () => (await import("../features/firings/kiln-book")).KilnBookScreen) },
  { path: "/kilns/:id/change", screen: lazy(async () => (await import("../features/firings/write-kiln")).ChangeKilnScreen) },
  { path: "/programmes", screen: lazy(async () => (await import("../features/firings/programmes")).ProgrammesScreen) },
  { path: "/programmes/new", screen: lazy(async () => (await import("../features/firings/write-programme")).NewProgrammeScreen) },
  { path: "/programmes/:id", screen: lazy(async () => (await import("../features/firings/write-programme")).ChangeProgrammeScreen) },
  { path: "/kilns/:id", screen: lazy(async () => (await import("../features/firings/kiln")).KilnScreen) },
  { path: "/loads/new", screen: lazy(async () => (await import("../features/firings/new-load")).NewLoadScreen) },
  { path: "/loads/:id", screen: lazy(async () => (await import("../features/firings/load")).LoadScreen) },
  { path: "/loads/:id/fees", screen: lazy(async () => (await import("../features/firings/fees")).FeesScreen) },
  { path: "/loads/:id/readings", screen: lazy(async () => (await import("../features/firings/readings-table")).ReadingsTableScreen) },
  { path: "/loads/:id/reading", screen: lazy(async () => (await import("../features/firings/reading")).ReadingScreen) },
  { path: "/orders", place: "Orders", screen: lazy(async () => (await import("../features/orders/orders")).OrdersScreen) },
  { path: "/orders/new", screen: lazy(async () => (await import("../features/orders/new-order")).NewOrderScreen) },
  { path: "/orders/:id", screen: lazy(async () => (await import("../features/orders/order")).OrderScreen) },
  { path: "/orders/:id/story", screen: lazy(async () => (await import("../features/orders/order-story-screen")).OrderStoryScreen) },
  { path: "/orders/:id/share", screen: lazy(async () => (await import("../features/sharing/share")).ShareScreen) },
  { path: "/orders/:id/papers", screen: lazy(async () => (await import("../features/papers/papers")).PapersScreen) },
  { path: "/glazes", screen: lazy(async () => (await import("../features/papers/glazes")).GlazesScreen) },
  { path: "/glazes/new", screen: lazy(async () => (await import("../features/papers/glazes")).NewGlazeScreen) },
  { path: "/reports/new", screen: lazy(async () => (await import("../features/papers/write-report")).NewReportScreen) },
  { path: "/found", screen: lazy(async () => (await import("../features/found/found")).FoundScreen) },
  { path: "/found/new", screen: lazy(async () => (await import("../features/found/new-found")).NewFoundScreen) },
  { path: "/found/:id", screen: lazy(async () => (await import("../features/found/found-one")).FoundOneScreen) },
  { path: "/pieces/:id/ticket", screen: lazy(async () => (await import("../features/firings/ticket")).TicketScreen) },
  { path: "/pieces/:id/what-if", screen: lazy(async () => (await import("../features/pieces/piece-what-if")).PieceWhatIfScreen) },
  { path: "/what-if", screen: lazy(async () => (await import("../features/pieces/what-if")).WhatIfScreen) },
  { path: "/pieces/:id", screen: lazy(async () => (await import("../features/pieces/piece")).PieceScreen) },
  { path: "/photos/:id", screen: lazy(async () => (await import("../features/photos/photo")).PhotoScreen) },
  { path: "/find", screen: lazy(async () => (await import("../features/find/find")).FindScreen) },
  { path: "/due", screen: lazy(async () => (await import("../features/studio/due")).DueScreen) },
  { path: "/me", screen: lazy(async () => (await import("../features/studio/me")).MeScreen) },
  { path: "/air", screen: lazy(async () => (await import("../features/studio/air")).AirScreen) },
  { path: "/people", screen: lazy(async () => (await import("../features/studio/people")).PeopleScreen) },
  { path: "/refused", screen: lazy(async () => (await import("../features/studio/hands")).RefusedScreen) },
  { path: "/backups", screen: lazy(async () => (await import("../features/studio/backups")).BackupsScreen) },
  { path: "/held", screen: lazy(async () => (await import("../features/studio/hands")).HeldScreen) },
  { path: "/moulds", screen: lazy(async () => (await import("../features/moulds/moulds")).MouldsScreen) },
  { path: "/clashes", screen: lazy(async () => (await import("../features/pieces/clashes")).ClashesScreen) },
  { path: "/load-clashes/:id", screen: lazy(async () => (await import("../features/pieces/clash")).LoadClashScreen) },
  { path: "/clashes/:id", screen: lazy(async () => (await import("../features/pieces/clash")).ClashScreen) },
  { path: "/press/:id", screen: lazy(async () => (await import("../features/moulds/press")).PressScreen) },
  { path: "/moulds/:id", screen: lazy(async () => (await import("../features/moulds/mould")).MouldScreen) },
  { path: "/not-taken", screen: lazy(async () => (await import("../features/studio/not-taken")).NotTakenScreen) },
  { path: "/more", screen: lazy(async () => (await import("../features/studio/more")).MoreScreen) },
  { path: "/person", screen: lazy(async () => (await import("../features/studio/person")).PersonScreen) },
];

export const PLACES = ROUTES.flatMap((route) => (route.place ? [{ word: route.place, href: route.path }] : []));
