/** The page of the service: a plan goes in, an answer comes out, by the same operations that programs use. */
import { element, list } from './dom.js';
import { shown } from './answer.js';

const at = (id) => document.getElementById(id);
const plan = at('plan');
const status = at('status');
let asked = 0;

async function loadDemo() {
  const name = at('demo').value;
  const reply = await fetch(`/pages/${name}`).catch(() => undefined);
  if (!reply?.ok) {
    status.textContent = `The demo ${name} could not be loaded.`;
    return;
  }
  plan.value = await reply.text();
  status.textContent = `Loaded ${name}. It is invented; change what you like, then check it.`;
}

async function check(event) {
  event.preventDefault();
  const turn = ++asked;
  at('check').disabled = true;
  status.textContent = 'Checking.';
  try {
    const { ok, wantsToken, body } = await ask();
    if (turn === asked) {
      if (wantsToken) {
        at('token-row').hidden = false;
      }
      show(ok ? shown(body) : problem(body), ok ? `Answer: ${body.verdict}. ${body.headline}` : `${body.title}.`);
      if (wantsToken) {
        at('token').focus();
      }
    }
  } catch (failure) {
    show([], `The service did not answer: ${failure.message}. Nothing was checked.`);
  } finally {
    at('check').disabled = false;
  }
}

async function ask() {
  const units = document.querySelector('input[name=units]:checked').value;
  const json = plan.value.trimStart().startsWith('{');
  const token = at('token').value.trim();
  const reply = await fetch(`/v1/layout-analyses?units=${units}`, {
    method: 'POST',
    headers: {
      'Content-Type': json ? 'application/json' : 'application/yaml',
      Accept: 'application/json',
      ...(token && { Authorization: `Bearer ${token}` }),
    },
    body: plan.value,
  });
  return { ok: reply.ok, wantsToken: reply.status === 401, body: await reply.json() };
}

function show(parts, words) {
  at('body').replaceChildren(...parts);
  at('answer').hidden = parts.length === 0;
  status.textContent = words;
  if (parts.length > 0) {
    at('answer').focus({ preventScroll: true });
    at('answer').scrollIntoView({ block: 'start' });
  }
}

/** What is wrong with the plan, each fault with a way to its line. */
function problem(body) {
  const faults = (body.errors ?? []).map((one) => {
    const item = element('li', {}, `${one.pointer ?? ''} ${one.detail} ${one.remedy ?? ''} `);
    if (one.line > 0) {
      const go = element('button', { type: 'button' }, `Go to line ${one.line}`);
      go.addEventListener('click', () => goTo(one.line));
      item.append(go);
    }
    return item;
  });
  return [
    element('p', { class: 'verdict FAIL' }, body.title),
    element('p', {}, body.detail ?? ''),
    element('ul', {}, ...faults),
    list(['Nothing was checked.']),
  ];
}

function goTo(line) {
  const lines = plan.value.split('\n');
  const start = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
  plan.focus();
  plan.setSelectionRange(start, start + (lines[line - 1] ?? '').length);
}

at('load').addEventListener('click', loadDemo);
at('form').addEventListener('submit', check);
loadDemo();
