// The sheet of the kitchen goes to paper by a button: one that stands only where scripts run.
document.addEventListener("click", (event) => {
  if (event.target.closest?.("[data-print]")) print();
});

