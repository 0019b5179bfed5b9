// Little on purpose: the page works without it. It sends a picture as soon as it is taken, keeps half-typed words, stays where the thumb
// was, and lets a save be felt.
"use strict";

for (const input of document.querySelectorAll(".shutter input[type=file]")) {
  input.addEventListener("change", () => { if (input.files.length) input.form.requestSubmit(); });
}

for (const form of document.querySelectorAll("form[data-form]")) {
  const of = JSON.parse(form.dataset.form);
  let waiting;
  const keep = (field) => {
    const draft = { do: "draft", form: of, field: field.name, text: field.value };
    return fetch("/draft", { method: "POST", body: JSON.stringify(draft), keepalive: true });
  };
  form.addEventListener("input", (event) => {
    const field = event.target;
    if (!field.name) return;
    clearTimeout(waiting);
    waiting = setTimeout(() => keep(field), 300);
  });
  // What is sent needs no draft any more.
  form.addEventListener("submit", () => clearTimeout(waiting));
}

// Where the phone stands, into the field beside the button; a search goes off at once.
for (const button of document.querySelectorAll("button[data-here]")) {
  if (!navigator.geolocation) continue;
  button.hidden = false;
  const says = button.nextElementSibling;
  button.addEventListener("click", () => {
    says.textContent = "";
    navigator.geolocation.getCurrentPosition(({ coords }) => {
      const field = document.getElementById(button.dataset.here);
      field.value = `${coords.latitude.toFixed(6)}, ${coords.longitude.toFixed(6)}`;
      field.dispatchEvent(new Event("input", { bubbles: true }));
      if (field.form.classList.contains("search")) field.form.requestSubmit();
    }, () => { says.textContent = button.dataset.failed; }, { enableHighAccuracy: true, timeout: 15000 });
  });
}

// After a tap the same page comes back: at the height where it was, unless the tap opened something at its top.
addEventListener("submit", (event) => {
  if (event.target.closest(".likely")) return;
  sessionStorage.setItem("stay", JSON.stringify({ at: location.pathname, height: scrollY }));
});
const stay = JSON.parse(sessionStorage.getItem("stay") ?? "null");
sessionStorage.removeItem("stay");
if (stay?.at === location.pathname) {
  addEventListener("load", () => requestAnimationFrame(() => scrollTo(0, stay.height)));
}

if (document.querySelector(".notice") && navigator.vibrate) navigator.vibrate(30);
