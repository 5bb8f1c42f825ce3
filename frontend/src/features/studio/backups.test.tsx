// @vitest-environment happy-dom
import { describe, expect, it } from "vitest";
import { drawn, withoutSignal } from "../common/test-phone";
import { BackupsScreen } from "./backups";
import { size } from "./use-backups";

const KEPT = { file: "natch-2026-10-31T02-30-00Z.zip", made_at: "2026-10-31T02:30:00Z", size_bytes: 12_345_678, tried_at: null, is_good: null };
const READ = { results: [KEPT], last_drill: null, good_drill_at: null, failure: null, is_old: false, is_drill_old: false, asked: [] };

withoutSignal();

describe("BackupsScreen", () => {
  it("says that none was tried yet, and how large each is", async () => {
    const phone = await drawn(<BackupsScreen />, { "backups/": READ });

    expect(phone.has("No backup was restored for trial yet.")).toBe(true);
    expect(phone.has("12.3\u202fMB")).toBe(true);
  });

  it("says in words what was wrong with a trial and with the last backup", async () => {
    const bad = { at: "2026-10-31T02:31:00Z", file: KEPT.file, is_good: false, words: "That backup is damaged." };
    const failure = { at: "2026-11-01T02:30:00Z", file: "", is_good: false, words: "There is no room for a backup." };

    const phone = await drawn(<BackupsScreen />, { "backups/": { ...READ, last_drill: bad, failure, is_drill_old: true } });

    expect(phone.has("was not whole")).toBe(true);
    expect(phone.has("That backup is damaged.")).toBe(true);
    expect(phone.has("The last one failed. There is no room for a backup.")).toBe(true);
    expect(phone.has("None came back whole for more than a month.")).toBe(true);
  });

  it("does not ask twice for what is being done", async () => {
    const phone = await drawn(<BackupsScreen />, { "backups/": { ...READ, asked: ["backup"] } });

    const acts = [...phone.root.querySelectorAll("button")].map((one) => [one.textContent, one.disabled]);
    expect(acts.slice(1)).toEqual([["Try the newest", false], ["Being made", true]]);
  });
});

describe("size", () => {
  it("is never nought", () => {
    expect(size(40)).toBe("0.1\u202fMB");
  });
});
