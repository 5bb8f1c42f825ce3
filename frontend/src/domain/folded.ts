/** What two texts share that a person would call the same word: no case, no accents, nothing unseen. The studio folds alike. */

/** Letters with a stroke or a tail, which no decomposition takes apart. */
const PLAIN: Readonly<Record<string, string>> = { "æ": "ae", "œ": "oe", "ø": "o", "ł": "l", "đ": "d", "ð": "d", "þ": "th", "ı": "i", "ß": "ss", "ς": "σ", "\u2019": "'" };
const PLAINED = new RegExp(`[${Object.keys(PLAIN).join("")}]`, "gu");
/** Marks over letters, what only steers the line, and fillers that print as nothing. */
const UNSEEN = /[\p{Mn}\p{Cf}\u115f\u1160\u2800]/gu;

export function folded(text: string): string {
  return text
    .normalize("NFKD").toLowerCase().normalize("NFKD")
    .replace(PLAINED, (letter) => PLAIN[letter] ?? letter)
    .replace(UNSEEN, "")
    .replace(/\s+/gu, " ").replace(/\p{Cc}/gu, "")
    .trim();
}

/** The words that were asked for; none where nothing was. */
export function wordsOf(asked: string): string[] {
  return folded(asked).split(" ").filter((word) => word !== "");
}
