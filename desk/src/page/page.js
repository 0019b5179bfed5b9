// Little on purpose: the page works without it. It sends a picture as soon as it is taken, keeps half-typed words, and lets a save be felt.
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
}

if (document.querySelector(".notice") && navigator.vibrate) navigator.vibrate(30);
