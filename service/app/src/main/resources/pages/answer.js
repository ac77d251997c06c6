/** Shows an answer: the verdict, what was not checked, the layout with its forces, the checks, and what stands behind them. */
import { digits, element, figure, folded, list, ratio, table } from './dom.js';
import { drawings } from './drawing.js';

/**
 * @param {object} answer a layout analysis
 * @returns {Node[]}
 */
export function shown(answer) {
  return [
    element('p', { class: `verdict ${answer.verdict}` }, answer.verdict),
    element('p', {}, answer.headline),
    element('h3', {}, `Not checked: ${answer.notChecked.length}`),
    notChecked(answer.notChecked),
    element('h3', {}, 'Cautions'),
    list(answer.cautions),
    element('h3', {}, 'Layout and forces'),
    layout(answer),
    element('h3', {}, 'Checks'),
    ...checks(answer.checks),
    folded(`Advice (${answer.advisories.length})`, list(answer.advisories.map((one) => one.message))),
    folded(`Assumptions (${answer.assumptions.length})`, list(answer.assumptions)),
    folded('What was solved', counts(answer.counts)),
    folded('The whole answer as JSON', element('pre', { tabindex: '0' }, JSON.stringify(answer, null, 2))),
  ];
}

function notChecked(items) {
  if (items.length === 0) {
    return element('p', {}, 'Every required check was made.');
  }
  const rows = items.map((one) => [one.title, one.place ?? '', one.reason]);
  return table('Not checked is never a pass', [{ head: 'Check' }, { head: 'Place' }, { head: 'Why' }], rows);
}

function layout(answer) {
  const box = element('div');
  const place = element('div');
  const choice = element(
    'select',
    { id: 'situation' },
    ...answer.situations.map((one, i) => element('option', { value: String(i) }, `${one.name} (${one.verdict})`)),
  );
  const show = () => place.replaceChildren(...situation(answer.layout, answer.situations[Number(choice.value)]));
  choice.addEventListener('change', show);
  box.append(element('p', { class: 'row' }, element('label', { for: 'situation' }, 'Situation'), choice), place);
  show();
  return box;
}

function situation(lines, one) {
  const parts = one.reason ? [element('p', { class: one.verdict }, one.reason)] : [];
  for (const { svg, words } of drawings(lines, one)) {
    parts.push(element('figure', {}, svg, element('figcaption', {}, words)));
  }
  const columns = [
    { head: 'Post' },
    { head: 'Greatest', number: true },
    { head: 'Least', number: true },
    { head: 'By hand', number: true },
    { head: 'Governed by' },
  ];
  const rows = (one.posts ?? []).map((post) => [
    post.post,
    figure(post.greatest),
    figure(post.least),
    figure(post.handCheck),
    `${post.greatest.combination}, ${post.greatest.pattern}`,
  ]);
  if (rows.length > 0) {
    parts.push(table(`Post loads, ${one.name}`, columns, rows));
  }
  return parts;
}

/** Each check at its worst place; what was not checked stands further up, what does not apply is folded away. */
function checks(results) {
  const made = results.filter((one) => one.verdict === 'PASS' || one.verdict === 'FAIL');
  made.sort((a, b) => rank(b) - rank(a));
  const columns = [
    { head: 'Verdict' },
    { head: 'Check' },
    { head: 'Place' },
    { head: 'Ratio', number: true },
    { head: 'Demand', number: true },
    { head: 'Capacity', number: true },
    { head: 'By' },
  ];
  const rows = made.map((one) => [
    element('span', { class: one.verdict }, one.verdict),
    explained(one),
    one.place ?? '',
    one.ratio === undefined ? '' : ratio(one.ratio),
    figure(one.demand),
    one.capacityNone ? 'none' : figure(one.capacity),
    cited(one.citation),
  ]);
  const rest = results.filter((one) => one.verdict === 'NOT_APPLICABLE');
  return [
    table('Checks that were made, worst first', columns, rows),
    folded(
      `Checks that do not apply (${rest.length})`,
      table(
        'Checks that do not apply',
        [{ head: 'Check' }, { head: 'Why' }],
        rest.map((one) => [explained(one), one.reason ?? one.message ?? '']),
      ),
    ),
  ];
}

function cited(citation) {
  const parts = citation ? [citation.document, citation.edition, citation.locator] : [];
  return parts.filter((part) => part && part !== 'none').join(' ');
}

/** Failures come first, those without any capacity before all others. */
function rank(one) {
  return (one.verdict === 'FAIL' ? 1e9 : 0) + (one.capacityNone ? 1e12 : (one.ratio ?? 0));
}

function explained(one) {
  return element('a', { href: `/v1/checks/${encodeURIComponent(one.check)}` }, one.title);
}

function counts(all) {
  return list(Object.entries(all).map(([name, value]) => `${name}: ${digits(value, 9)}`));
}
