import { describe, expect, it } from "vitest";
import { readAnswer, retryAfterSeconds } from "./answers";
import { csrfToken } from "./client";
import { errorAt, problemOf, ProblemError } from "./problem";

describe("readAnswer", () => {
  it("takes JSON and problem documents for the studio's own", async () => {
    const answer = await readAnswer(
      new Response('{"title":"No."}', { status: 409, headers: { "Content-Type": "application/problem+json" } }),
    );

    expect(answer).toMatchObject({ status: 409, isOurs: true, body: { title: "No." } });
  });

  it("does not take a hotel's sign-in page for an answer", async () => {
    const answer = await readAnswer(new Response("<p>Welcome", { status: 200, headers: { "Content-Type": "text/html" } }));

    expect(answer.isOurs).toBe(false);
  });

  it("does not take broken JSON for an answer", async () => {
    const answer = await readAnswer(new Response("{", { headers: { "Content-Type": "application/json" } }));

    expect(answer.isOurs).toBe(false);
  });
});

describe("retryAfterSeconds", () => {
  // Both forms: RFC 9110, section 10.2.3.
  it("reads seconds and dates", () => {
    const now = new Date("1999-12-31T23:57:59Z");

    expect(retryAfterSeconds("120", now)).toBe(120);
    expect(retryAfterSeconds("Fri, 31 Dec 1999 23:59:59 GMT", now)).toBe(120);
    expect(retryAfterSeconds("soon", now)).toBeNull();
    expect(retryAfterSeconds(null, now)).toBeNull();
  });
});

describe("csrfToken", () => {
  it("finds its own cookie among others", () => {
    expect(csrfToken("a=1; csrftoken=x%2By; b=2")).toBe("x+y");
    expect(csrfToken("notcsrftoken=1")).toBeNull();
  });
});

describe("problemOf", () => {
  it("keeps the named facts and puts errors beside their fields", () => {
    const problem = problemOf(400, {
      type: "/problems/invalid-request", title: "No.", status: 400, detail: "Too heavy.", limit_g: 5,
      errors: [{ pointer: "#/mass_g", code: "max-value", detail: "At most 5 g." }],
    });

    expect(problem.facts).toEqual({ limit_g: 5 });
    expect(errorAt(problem, "#/mass_g")).toBe("At most 5 g.");
    expect(errorAt(problem, "#/note")).toBeNull();
    expect(new ProblemError(problem).code).toBe("invalid-request");
  });

  it("makes about:blank of a proxy's own words", () => {
    expect(problemOf(502, { message: "bad gateway" }).type).toBe("about:blank");
  });
});
