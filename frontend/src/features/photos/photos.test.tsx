// @vitest-environment happy-dom
import { beforeEach, describe, expect, it, vi } from "vitest";
import { drawn, takePhoto, until, withoutSignal } from "../common/test-phone";
import { NewFoundScreen } from "../found/new-found";
import { PieceScreen } from "../pieces/piece";
import { pieceSample } from "../pieces/piece-sample";

const PICTURE = new Blob(["as the camera gave it"], { type: "image/jpeg" });

withoutSignal();
beforeEach(() => {
  // No canvas here: the picture goes as it is.
  vi.stubGlobal("createImageBitmap", () => Promise.reject(new Error("no canvas in a test")));
  vi.spyOn(URL, "createObjectURL").mockReturnValue("blob:kept");
  vi.spyOn(URL, "revokeObjectURL").mockReturnValue(undefined);
});

describe("a photo", () => {
  it("is kept before the loss that it shows, which names it", async () => {
    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": pieceSample({ stage: "drying", state: "drying" }) });
    await until(() => { phone.press("Something else"); });
    await until(() => { phone.press("Scrap, missing"); });
    await until(() => { takePhoto(phone.root, PICTURE); });
    await until(() => { expect(phone.has("Take another")).toBe(true); });
    await until(() => { phone.type("or in your own words", "fell"); });

    await until(() => { phone.press("S04: scrapped"); });

    await until(() => { expect(phone.acts()).toHaveLength(2); });
    const [photo, loss] = phone.acts();
    expect(photo).toMatchObject({ verb: "took_photo", path: "/api/v1/studios/barn/photos/", words: "S04: Scrapped: fell (photo)" });
    expect(photo?.photo).not.toBeNull();
    expect(loss).toMatchObject({ verb: "scrapped", body: { cause: "fell", photo_ids: [photo?.id] } });
  });

  it("can be kept with a piece and nothing else said", async () => {
    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": pieceSample() });
    await until(() => { phone.press("Something else"); });
    await until(() => { phone.press("Photo…"); });
    await until(() => { takePhoto(phone.root, PICTURE); });
    await until(() => { expect(phone.has("Take another")).toBe(true); });

    await until(() => { phone.press("Keep with S04"); });

    await until(() => { expect(phone.acts().map((act) => act.verb)).toEqual(["took_photo", "photographed"]); });
    expect(phone.acts()[1]?.body["photo_ids"]).toEqual([phone.acts()[0]?.id]);
  });

  it("comes with damage that somebody saw, of the part they name", async () => {
    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": pieceSample({ mine: false, maker: { id: "m2", first_name: "Nell", initials: "NQ" } }) });
    await until(() => { phone.press("Something else"); });
    await until(() => { phone.press("Cracked, chipped"); });
    expect(phone.has("Nell decides what becomes of it")).toBe(true);
    await until(() => { takePhoto(phone.root, PICTURE); });
    await until(() => { expect(phone.has("Take another")).toBe(true); });

    await until(() => { phone.press("body: cracked"); });

    await until(() => { expect(phone.acts().map((act) => act.verb)).toEqual(["took_photo", "cracked"]); });
    expect(phone.acts()[1]).toMatchObject({ path: "/api/v1/studios/barn/parts/part1/events/", body: { kind: "cracked", photo_ids: [phone.acts()[0]?.id] } });
  });

  it("that is left out does not leave the phone", async () => {
    const phone = await drawn(<NewFoundScreen />, {});
    await until(() => { takePhoto(phone.root, PICTURE); });
    await until(() => { phone.press("Leave photo 1 out"); });
    await until(() => { expect(phone.has("Take a photo")).toBe(true); });
    await until(() => { phone.type("What is it", "beaker"); });

    await until(() => { phone.press("Keep"); });

    await until(() => { expect(phone.acts().map((act) => act.verb)).toEqual(["found_ware"]); });
    expect(phone.acts()[0]?.body).not.toHaveProperty("photo_ids");
  });

  it("of the piece stands on its screen, and leads to the whole", async () => {
    const phone = await drawn(<PieceScreen id="p1" />, { "pieces/p1/": pieceSample({}, { photo_ids: ["late", "early"] }) });

    await until(() => { expect(phone.has("latest of 2")).toBe(true); });
    const link = phone.root.querySelector("a[href='/photos/late']");
    expect(link?.querySelector("img")?.getAttribute("src")).toBe("/api/v1/studios/barn/photos/late/thumbnail/");
    expect(link?.getAttribute("aria-label")).toBe("Photo of S04");
  });
});
