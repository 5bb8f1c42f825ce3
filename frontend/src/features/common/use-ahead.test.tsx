// @vitest-environment happy-dom
import { useQueryClient } from "@tanstack/preact-query";
import type { QueryClient } from "@tanstack/preact-query";
import { describe, expect, it, vi } from "vitest";
import { drawn, putAway, until, withoutSignal } from "./test-phone";
import { useAhead } from "./use-ahead";
import type { Ahead } from "./use-ahead";

withoutSignal();

const NAMED: Ahead[] = [{ path: "kilns/" }, { path: "pieces/", isWholeList: true }];
let queries: QueryClient | null = null;

function Bench({ isHeard, rest_ms = 0 }: { isHeard: boolean; rest_ms?: number }) {
  queries = useQueryClient();
  useAhead(NAMED, isHeard, rest_ms);
  return <p>the bench</p>;
}

function studioAnswers(answers: Record<string, unknown>): string[] {
  const asked: string[] = [];
  vi.stubGlobal("fetch", (path: string) => {
    asked.push(path.replace("/api/v1/studios/barn/", ""));
    const body = answers[asked.at(-1) ?? ""];
    return body === undefined ? Promise.reject(new TypeError("no signal in a test")) : Promise.resolve(Response.json(body));
  });
  return asked;
}

describe("useAhead", () => {
  it("reads what is named, lists with all their pages, and leaves what was read lately", async () => {
    const asked = studioAnswers({ "kilns/": { results: ["K1"] }, "pieces/": { results: ["T26"], next: "/api/v1/studios/barn/pieces/?after=1" }, "pieces/?after=1": { results: ["T27"], next: null } });

    await drawn(<Bench isHeard />, {});
    await until(() => { expect(queries?.getQueryData(["barn", "pieces/"])).toEqual({ results: ["T26", "T27"], next: null }); });
    expect(queries?.getQueryData(["barn", "kilns/"])).toEqual({ results: ["K1"] });
    putAway();
    await drawn(<Bench isHeard />, { "kilns/": { results: ["K1"] } });

    await until(() => { expect(asked).toHaveLength(5); });
    expect(asked).toEqual(["kilns/", "pieces/", "pieces/?after=1", "pieces/", "pieces/?after=1"]);
  });

  it("stops at the first that is not answered, as there is no signal", async () => {
    const asked = studioAnswers({ "pieces/": { results: [], next: null } });

    await drawn(<Bench isHeard />, {});

    await until(() => { expect(asked).toEqual(["kilns/"]); });
    await until(() => { expect(queries?.getQueryState(["barn", "kilns/"])?.status).toBe("error"); });
    expect(asked).toEqual(["kilns/"]);
  });

  it("asks nothing while the studio is not heard, nor once the screen is left", async () => {
    const asked = studioAnswers({});

    await drawn(<Bench isHeard={false} />, {});
    await drawn(<Bench isHeard rest_ms={60_000} />, {});
    putAway();

    expect(asked).toEqual([]);
  });
});
