/** A photo as it leaves the phone: upright, no larger than is kept, and without what the camera wrote into it. */
import { shrunk } from "../../domain/shrunk";

/** Common practice, no source: above it files grow and pictures hardly do. */
const QUALITY = 0.85;

/** What this browser cannot read goes as it is; the studio says what is wrong with it. */
export async function shrinkPhoto(file: Blob): Promise<Blob> {
  const picture = await createImageBitmap(file).catch(() => null);
  if (picture === null) return file;
  const canvas = document.createElement("canvas");
  Object.assign(canvas, shrunk(picture));
  const paper = canvas.getContext("2d");
  if (paper === null) return file;
  // JPEG has no clear pixels; they would turn black.
  paper.fillStyle = "white";
  paper.fillRect(0, 0, canvas.width, canvas.height);
  paper.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const made = await new Promise<Blob | null>((resolve) => { canvas.toBlob(resolve, "image/jpeg", QUALITY); });
  return made ?? file;
}
