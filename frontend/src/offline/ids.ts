/**
 * A UUID of version 7: RFC 9562, section 5.7. Made with `getRandomValues`, because `randomUUID` is missing on plain http.
 */
export function uuid7(now_ms: number = Date.now()): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  for (let place = 0; place < 6; place += 1) bytes[place] = Math.floor(now_ms / 2 ** (8 * (5 - place))) & 0xff;
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x70;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}
