// Runs before the first paint, so that a phone set to Shed never flashes white in a dark shed.
(function () {
  try {
    var look = JSON.parse(localStorage.getItem("natch.look") || "{}");
    var root = document.documentElement;
    if (look.theme && look.theme !== "phone") root.dataset.theme = look.theme;
    if (look.hand) root.dataset.hand = look.hand;
    if (look.text) root.dataset.text = String(look.text);
  } catch {
    // A browser that keeps nothing shows the phone's own look.
  }
})();
