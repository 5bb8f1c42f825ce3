// @vitest-environment happy-dom
import { render } from "preact";
import { act } from "preact/test-utils";
import { h } from "preact";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { isUntouched, LOCK_AFTER_MS, useLock } from "./lock";

const root = document.createElement("div");
const lock = vi.fn();

function Held() {
  useLock(true, lock);
  return null;
}

beforeEach(() => {
  vi.useFakeTimers();
  lock.mockReset();
  void act(() => { render(h(Held, null), root); });
});

afterEach(() => {
  void act(() => { render(null, root); });
  vi.useRealTimers();
});

describe("useLock", () => {
  it("puts the phone down after ten minutes without a touch, and not before", () => {
    vi.advanceTimersByTime(LOCK_AFTER_MS - 6_000);
    expect(lock).not.toHaveBeenCalled();

    vi.advanceTimersByTime(6_000);
    expect(lock).toHaveBeenCalled();
  });

  it("begins to count anew with every touch", () => {
    vi.advanceTimersByTime(LOCK_AFTER_MS - 6_000);
    dispatchEvent(new Event("pointerdown"));

    vi.advanceTimersByTime(LOCK_AFTER_MS - 6_000);

    expect(lock).not.toHaveBeenCalled();
  });

  it("takes the touch that wakes a sleeping phone for the next hand's", () => {
    vi.setSystemTime(Date.now() + LOCK_AFTER_MS);

    dispatchEvent(new Event("pointerdown"));

    expect(lock).toHaveBeenCalledOnce();
    expect(isUntouched()).toBe(true);
  });
});
