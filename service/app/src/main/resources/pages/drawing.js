/** Draws the layout from above with what posts and bearings carry, and each shore from the side with its forces. */
import { digits } from './dom.js';

const SVG = 'http://www.w3.org/2000/svg';

/**
 * @param {object} layout lines of an answer
 * @param {object} situation of the same answer
 * @returns {{svg: SVGElement, words: string}[]}
 */
export function drawings(layout, situation) {
  return [above(layout, situation), ...layout.shores.map((shore) => side(shore, situation))];
}

function above(layout, situation) {
  const xs = [...layout.joists.map((j) => j.x.value), ...layout.shores.flatMap((s) => [s.from.value, s.to.value])];
  const ys = layout.joists.flatMap((j) => [j.from.value, j.to.value]);
  const box = frame(xs, ys);
  const size = Math.max(box.width, box.height) / 34;
  const svg = canvas(box, 'Layout from above');
  const x = (value) => value - box.x;
  const y = (value) => box.y + box.height - value;
  const joistWidth = size / 6;
  for (const joist of layout.joists) {
    line(svg, 'joist', x(joist.x.value), y(joist.from.value), x(joist.x.value), y(joist.to.value), joistWidth);
  }
  for (const bearing of layout.bearings) {
    const gone = situation.removed.includes(bearing.bearing);
    const from = bearing.from?.value ?? box.x + size;
    const to = bearing.to?.value ?? box.x + box.width - size;
    line(svg, gone ? 'bearing removed' : 'bearing', x(from), y(bearing.y.value), x(to), y(bearing.y.value), size / 3);
    const load = situation.bearings.find((one) => one.bearing === bearing.bearing);
    const carried = gone ? 'taken out' : load ? force(load.greatest) : '';
    label(svg, x(from), y(bearing.y.value) - size * 0.5, size, `${bearing.bearing} ${carried}`, 'start');
  }
  for (const shore of layout.shores) {
    line(svg, 'beam', x(shore.from.value), y(shore.y.value), x(shore.to.value), y(shore.y.value), size / 2);
    label(svg, x(shore.from.value) - size * 0.3, y(shore.y.value) + size * 0.3, size, shore.shore, 'end');
    for (const post of shore.posts) {
      const load = postLoad(situation, shore, post);
      circle(svg, 'post', x(post.x.value), y(shore.y.value), size * 0.55);
      label(svg, x(post.x.value), y(shore.y.value) + size * 1.7, size * 0.85, post.name, 'middle');
      label(svg, x(post.x.value), y(shore.y.value) + size * 2.6, size * 0.85, load ? force(load.greatest) : '', 'middle');
    }
  }
  const words = `${situation.name}, from above: joists as thin lines, bearings with the greatest load each, shores with posts.`;
  return { svg, words };
}

function side(shore, situation) {
  const loads = shore.posts.map((post) => ({ post, load: postLoad(situation, shore, post) })).filter((one) => one.load);
  const length = shore.to.value - shore.from.value;
  const size = length / 45;
  const most = Math.max(1e-9, ...loads.map((one) => Math.max(one.load.greatest.value, one.load.handCheck.value)));
  const box = { x: shore.from.value - 3 * size, y: 0, width: length + 6 * size, height: 15 * size };
  const svg = canvas(box, `Shore ${shore.shore} from the side`);
  const x = (value) => value - box.x;
  line(svg, 'beam', x(shore.from.value), 2 * size, x(shore.to.value), 2 * size, size);
  for (const { post, load } of loads) {
    const foot = (value) => 2.6 * size + (8 * size * value) / most;
    const at = x(post.x.value);
    arrow(svg, 'force', at, foot(load.greatest.value), 2.6 * size, size);
    line(svg, 'hand', at + size * 0.7, foot(load.handCheck.value), at + size * 0.7, 2.6 * size, size / 5);
    label(svg, at, 12.2 * size, size * 0.9, `${post.name} ${force(load.greatest)}`, 'middle');
    label(svg, at, 13.4 * size, size * 0.8, `by hand ${digits(load.handCheck.value, 3)}`, 'middle');
  }
  const words = `${shore.shore} from the side: arrows are the greatest post loads, thin lines beside them the hand check.`;
  return { svg, words };
}

function postLoad(situation, shore, post) {
  return situation.posts?.find((one) => one.shore === shore.shore && one.post === post.name);
}

function force(extreme) {
  return `${digits(extreme.value, 3)} ${extreme.unit}`;
}

function frame(xs, ys) {
  const x = Math.min(...xs);
  const y = Math.min(...ys);
  const width = Math.max(...xs) - x;
  const height = Math.max(...ys) - y;
  const edge = Math.max(width, height) * 0.09;
  return { x: x - edge, y: y - edge, width: width + 2 * edge, height: height + 2 * edge };
}

function canvas(box, title) {
  const svg = part('svg', {
    class: 'drawing',
    viewBox: `0 0 ${box.width} ${box.height}`,
    role: 'img',
    'aria-label': title,
  });
  const words = part('title', {});
  words.textContent = title;
  svg.append(words);
  return svg;
}

function line(svg, kind, x1, y1, x2, y2, width) {
  svg.append(part('line', { class: kind, x1, y1, x2, y2, 'stroke-width': width }));
}

function circle(svg, kind, cx, cy, r) {
  svg.append(part('circle', { class: kind, cx, cy, r, 'stroke-width': r / 3 }));
}

/** An arrow that pushes up under a beam. */
function arrow(svg, kind, x, from, to, size) {
  line(svg, kind, x, from, x, to + size, size / 3);
  svg.append(part('polygon', { class: kind, stroke: 'none', 'stroke-width': 0, points: `${x},${to} ${x - size / 2},${to + size} ${x + size / 2},${to + size}` }));
}

function label(svg, x, y, size, text, anchor) {
  const made = part('text', { x, y, 'font-size': size, 'text-anchor': anchor });
  made.textContent = text;
  svg.append(made);
}

function part(name, attributes) {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) {
    made.setAttribute(key, value);
  }
  return made;
}
