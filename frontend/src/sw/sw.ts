/** The service worker: the shell from the phone, everything under /api from the studio and never from here. */
export {};

declare const self: ServiceWorkerGlobalScope;
declare const __SHELL_FILES__: string[];
declare const __SHELL_VERSION__: string;

const CACHE = `natch-shell-${__SHELL_VERSION__}`;
const PAGE = "/";
/** Addresses the server draws itself. */
const SERVERS_OWN = /^\/(?:api|admin|help|static|trust|c|problems|schema)(?:\/|$)/;

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(__SHELL_FILES__.map((file) => new Request(file, { cache: "reload" })))));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name.startsWith("natch-shell-") && name !== CACHE).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

// The page asks for this when it starts, and only then: a shell changed under a running page loses its screens.
self.addEventListener("message", (event) => {
  if (event.data === "take over") void self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin || SERVERS_OWN.test(url.pathname)) return;
  event.respondWith(fromShell(request));
});

async function fromShell(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(request.mode === "navigate" ? PAGE : request);
  return kept ?? fetch(request);
}
