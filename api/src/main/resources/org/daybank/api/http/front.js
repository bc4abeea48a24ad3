'use strict';
const PATH = '/v1/system-design';
const find = (id) => document.getElementById(id);
const frame = document.querySelector('#sheet iframe');

/** Shows one form of the answer. */
function show(form) {
  for (const button of document.querySelectorAll('#forms button')) {
    const chosen = button.dataset.form === form;
    button.setAttribute('aria-pressed', String(chosen));
    find(button.dataset.form).hidden = !chosen;
  }
}

function ask(path, brief) {
  return fetch(path, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: brief });
}

/** What is wrong with a brief, everything at once. */
async function tell(refused) {
  const problem = await refused.json();
  find('status').textContent = problem.title;
  const wrong = problem.errors || [{ pointer: '', detail: problem.detail }];
  find('problems').replaceChildren(...wrong.map((one) => {
    const item = document.createElement('li');
    const place = document.createElement('code');
    place.textContent = one.pointer || one.parameter || '';
    item.append(place, ' ', one.detail);
    return item;
  }));
}

async function showSheet(html, name) {
  const shown = new Promise((then) => frame.addEventListener('load', then, { once: true }));
  frame.srcdoc = html;
  const save = find('save');
  if (save.href) {
    URL.revokeObjectURL(save.href);
  }
  save.href = URL.createObjectURL(new Blob([html], { type: 'text/html' }));
  save.download = name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') + '.html';
  save.hidden = false;
  await shown;
}

/** The same call for a shell; the brief ends where no line of it can. */
function curl(brief) {
  let end = 'BRIEF';
  while (brief.split('\n').includes(end)) {
    end += '_';
  }
  return `curl -s -H 'Content-Type: application/json' --data-binary @- \\\n     '${location.origin}${PATH}?working=true' <<'${end}'\n`
      + `${brief}\n${end}\n`;
}

/** The same call from Java 17, which needs no library. */
function java(brief) {
  const text = brief.replaceAll('\\', '\\\\').replaceAll('"""', '\\"""').split('\n').join('\n        ');
  return `import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;

HttpRequest request = HttpRequest.newBuilder(URI.create("${location.origin}${PATH}?working=true"))
    .header("Content-Type", "application/json")
    .POST(HttpRequest.BodyPublishers.ofString("""
        ${text}
        """))
    .build();
String answer = HttpClient.newHttpClient()
    .send(request, HttpResponse.BodyHandlers.ofString())
    .body();
`;
}

async function design() {
  const brief = find('brief').value;
  find('curl').textContent = curl(brief);
  find('java').textContent = java(brief);
  find('problems').replaceChildren();
  find('status').textContent = 'Designing …';
  const began = performance.now();
  try {
    const answer = await ask(PATH + '?working=true', brief);
    const millis = Math.round(performance.now() - began);
    if (!answer.ok) {
      await tell(answer);
      return;
    }
    const found = await answer.json();
    find('json').textContent = JSON.stringify(found, null, 1);
    const page = await ask(PATH + '.html', brief);
    await showSheet(await page.text(), found.given.name);
    find('status').textContent = (found.result.kind === 'noDesign' ? 'No design; the sheet gives the reasons' : 'Designed')
        + ` in ${millis} ms, on the way there and back included.`;
  } catch (broken) {
    find('status').textContent = 'The service does not answer.';
  }
}

async function take(name, button) {
  const body = await fetch('/v1/examples/' + encodeURIComponent(name));
  find('brief').value = (await body.text()).trimEnd();
  for (const other of document.querySelectorAll('#scenarios button')) {
    other.setAttribute('aria-pressed', String(other === button));
  }
  await design();
}

async function begin() {
  const list = await (await fetch('/v1/examples')).json();
  const buttons = list.examples.filter((example) => example.postTo === PATH).map((example) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = example.summary;
    button.setAttribute('aria-pressed', 'false');
    button.addEventListener('click', () => take(example.name, button));
    return [button, example.name];
  });
  find('scenarios').replaceChildren(...buttons.map(([button]) => button));
  find('design').addEventListener('click', design);
  for (const button of document.querySelectorAll('#forms button')) {
    button.addEventListener('click', () => show(button.dataset.form));
  }
  const [button, name] = buttons[0];
  await take(name, button);
}

begin();
