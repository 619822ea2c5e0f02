// Saves a reload where a page has a live part. Every page works without it.
"use strict";
document.addEventListener("htmx:configRequest", function (event) {
  event.detail.headers["X-Token"] = document.body.dataset.token;
});
// messages that say what was wrong are shown in place of the part that was asked for
document.addEventListener("htmx:beforeSwap", function (event) {
  if (event.detail.xhr.status >= 400 && event.detail.xhr.status < 500) {
    event.detail.shouldSwap = true;
    event.detail.isError = false;
  }
});
// a panel that opened out of sight is brought into it, by no more than that takes
document.addEventListener("htmx:afterSettle", function (event) {
  const panel = event.detail.target;
  if (panel.classList.contains("panel")) {
    panel.scrollIntoView({block: "nearest"});
  }
});
