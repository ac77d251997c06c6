/** Makes elements; texts of a plan or an answer only ever become text. */

/**
 * @param {string} name of the element
 * @param {Object<string, string>} attributes
 * @param {...(Node|string)} children
 * @returns {HTMLElement}
 */
export function element(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    made.setAttribute(key, value);
  }
  made.append(...children);
  return made;
}

/** A list of texts. */
export function list(texts) {
  return element('ul', {}, ...texts.map((text) => element('li', {}, text)));
}

/**
 * A table that scrolls by itself where the window is narrow.
 *
 * @param {string} caption
 * @param {{head: string, number?: boolean}[]} columns
 * @param {(Node|string)[][]} rows
 */
export function table(caption, columns, rows) {
  const kind = (column) => (column.number ? { class: 'number' } : {});
  const head = element('tr', {}, ...columns.map((c) => element('th', { scope: 'col', ...kind(c) }, c.head)));
  const body = rows.map((row) => element('tr', {}, ...row.map((cell, i) => element('td', kind(columns[i]), cell))));
  return element(
    'div',
    { class: 'scroll', tabindex: '0', role: 'region', 'aria-label': caption },
    element(
      'table',
      {},
      element('caption', {}, caption),
      element('thead', {}, head),
      element('tbody', {}, ...body),
    ),
  );
}

/** A part that can be opened. */
export function folded(title, ...children) {
  return element('details', {}, element('summary', {}, title), ...children);
}

/** A value with its unit, four digits. */
export function figure(quantity) {
  return quantity ? `${digits(quantity.value, 4)} ${quantity.unit}` : '';
}

/** A number for people. */
export function digits(value, count) {
  return value === 0 ? '0' : Number(value.toPrecision(count)).toLocaleString('en-US', { maximumFractionDigits: 8 });
}

/** A ratio for people: one above 1 never reads as 1. */
export function ratio(value) {
  const text = digits(value, 3);
  return value > 1 && Number(text.replaceAll(',', '')) <= 1 ? 'just over 1' : text;
}
