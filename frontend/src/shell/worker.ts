/** Registers the service worker, where there may be one: not on plain http, not while developing. */
export function startWorker(): void {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  const { serviceWorker } = navigator;
  const hadShell = serviceWorker.controller !== null;
  let isOver = false;
  serviceWorker.addEventListener("controllerchange", () => {
    if (!hadShell || isOver) return;
    isOver = true;
    location.reload();
  });
  void serviceWorker.register("/sw.js").then((registration) => {
    // Only a worker that was already waiting when the app was opened takes over: nobody has tapped anything yet.
    registration.waiting?.postMessage("take over");
  }).catch(() => undefined);
}
