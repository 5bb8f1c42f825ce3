/** One answer from the server, read but not judged; `null` where there was none. */
export interface Answer {
  status: number;
  /** True only for a JSON body or an empty 204: a captive portal's page is not the studio's answer. */
  isOurs: boolean;
  body: unknown;
  retryAfter_s: number | null;
}

/** Seconds from a Retry-After header, which holds seconds or a date: RFC 9110, section 10.2.3. */
export function retryAfterSeconds(header: string | null, now: Date): number | null {
  if (header === null) return null;
  if (/^\s*\d+\s*$/.test(header)) return Number(header);
  const at = Date.parse(header);
  return Number.isNaN(at) ? null : Math.max(0, (at - now.getTime()) / 1000);
}

const JSON_TYPES = /^application\/(?:[\w.-]+\+)?json\b/i;

export async function readAnswer(response: Response): Promise<Answer> {
  const retryAfter_s = retryAfterSeconds(response.headers.get("Retry-After"), new Date());
  const unread = { status: response.status, body: undefined, retryAfter_s };
  if (response.status === 204) return { ...unread, isOurs: true };
  if (!JSON_TYPES.test(response.headers.get("Content-Type") ?? "")) return { ...unread, isOurs: false };
  try {
    return { ...unread, isOurs: true, body: await response.json() };
  } catch {
    return { ...unread, isOurs: false };
  }
}
