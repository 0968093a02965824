// A folder or files dropped anywhere on a page are looked at in a copy of their own.

async function entries(item) {
  const entry = item.webkitGetAsEntry?.();
  if (!entry) return [];
  return await walk(entry);
}

async function walk(entry) {
  if (entry.isFile) {
    const file = await new Promise((done, failed) => entry.file(done, failed));
    return [[entry.fullPath, file]];
  }
  const reader = entry.createReader(), found = [];
  for (;;) {
    const some = await new Promise((done, failed) => reader.readEntries(done, failed));
    if (some.length === 0) return found;
    for (const below of some) if (!below.name.startsWith(".") && below.name !== "node_modules") found.push(...await walk(below));
  }
}

async function send(files) {
  const form = new FormData();
  for (const [path, file] of files) form.append("files", file, path);
  const answer = await fetch("/drop", { method: "POST", body: form });
  const text = await answer.text();
  if (answer.ok) location.assign(text);
  else alert(text);
}

const carriesFiles = event => [...(event.dataTransfer?.types ?? [])].includes("Files");

addEventListener("dragover", event => {
  if (!carriesFiles(event)) return;
  event.preventDefault();
  document.body.classList.add("dropping");
});
addEventListener("dragleave", event => { if (!event.relatedTarget) document.body.classList.remove("dropping"); });
addEventListener("drop", async event => {
  if (!carriesFiles(event)) return;
  event.preventDefault();
  document.body.classList.remove("dropping");
  const items = [...event.dataTransfer.items].filter(item => item.kind === "file");
  const found = (await Promise.all(items.map(entries))).flat();
  await send(found.length > 0 ? found : [...event.dataTransfer.files].map(file => [file.name, file]));
});
