// The two pages of the service in headless Chromium: what they show, at two widths, and that they can be used by keyboard alone.
// UNDERPROP_ADDRESS is where the service listens, CHROMIUM the browser; SHOTS, when set, is a folder for pictures.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { chromium } from 'playwright-core';

const address = process.env.UNDERPROP_ADDRESS;
const shots = process.env.SHOTS;
const widths = [
  ['desktop', { width: 1400, height: 900 }],
  ['phone', { width: 390, height: 844 }],
];
const PATIENCE = { timeout: 60_000 };
let browser;

before(async () => {
  assert.ok(address, 'UNDERPROP_ADDRESS is not set');
  browser = await chromium.launch({ executablePath: process.env.CHROMIUM, args: ['--no-sandbox'] });
});

after(() => browser?.close());

/** A page that fails its test for anything written to the console as an error, and for any request that leaves the service. */
async function open(path, viewport) {
  const page = await browser.newPage({ viewport });
  const faults = [];
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(address) && !url.startsWith('data:')) {
      faults.push(`asked for ${url}`);
    }
  });
  await page.goto(address + path);
  return { page, faults };
}

async function loaded(page) {
  await page.waitForFunction(() => document.getElementById('plan').value.length > 0, null, PATIENCE);
}

async function answered(page) {
  await page.waitForSelector('#answer:not([hidden])', PATIENCE);
}

async function fits(page, name) {
  const [content, window] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
  assert.ok(content <= window, `${name}: ${content} px of content in ${window} px`);
}

for (const [name, viewport] of widths) {
  test(`front page, ${name}: checks the demo and draws it`, async () => {
    const { page, faults } = await open('/', viewport);
    await loaded(page);
    assert.ok(await page.isHidden('#token-row'), 'a token is asked for only where one is wanted');
    await page.click('#check');
    await answered(page);
    assert.match(await page.textContent('.verdict'), /^(UNSTABLE|INADEQUATE|INCOMPLETE|ADEQUATE)$/);
    assert.match(await page.textContent('.caution'), /licensed engineer/);
    const answer = await page.textContent('#body');
    assert.ok(answer.indexOf('Not checked:') < answer.indexOf('Layout and forces'), 'what was not checked stands first');
    assert.ok((await page.$$('svg.drawing')).length >= 2);
    assert.ok((await page.$$('svg.drawing .post')).length >= 2);
    await fits(page, name);
    if (shots) {
      await page.screenshot({ path: `${shots}/front-${name}.png`, fullPage: true });
    }
    assert.deepEqual(faults, []);
    await page.close();
  });

  test(`contract page, ${name}: lists the operations`, async () => {
    const { page, faults } = await open('/docs', viewport);
    await page.waitForSelector('.opblock', PATIENCE);
    assert.ok((await page.$$('.opblock')).length >= 13);
    await fits(page, name);
    if (shots) {
      await page.screenshot({ path: `${shots}/docs-${name}.png` });
    }
    assert.deepEqual(faults, []);
    await page.close();
  });
}

test('contract page tries an operation', async () => {
  const { page, faults } = await open('/docs', widths[0][1]);
  await page.waitForSelector('.opblock', PATIENCE);
  await page.click('[id$=healthLive] .opblock-summary-control');
  await page.click('[id$=healthLive] button.execute');
  await page.waitForSelector('[id$=healthLive] .live-responses-table', PATIENCE);
  assert.match(await page.textContent('[id$=healthLive] .live-responses-table'), /"UP"/);
  assert.deepEqual(faults, []);
  await page.close();
});

test('front page by keyboard alone: load another demo, change units, check, read the answer', async () => {
  const { page, faults } = await open('/', widths[0][1]);
  await loaded(page);
  const focused = () => page.evaluate(() => document.activeElement.id || document.activeElement.value || document.activeElement.textContent);
  const tabTo = async (wanted) => {
    for (let i = 0; i < 40; i++) {
      if ((await focused()) === wanted) {
        return;
      }
      await page.keyboard.press('Tab');
    }
    assert.fail(`no way to ${wanted} by Tab; at ${await focused()}`);
  };
  await page.keyboard.press('Tab');
  assert.match(await focused(), /Skip to the plan/);
  await tabTo('demo');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await tabTo('load');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.getElementById('status').textContent.includes('two-spans'), null, PATIENCE);
  await tabTo('plan');
  await page.keyboard.press('Tab');
  assert.notEqual(await focused(), 'plan', 'the text is no trap');
  await page.keyboard.press('ArrowRight');
  assert.equal(await page.evaluate(() => document.querySelector('input[name=units]:checked').value), 'si');
  await tabTo('check');
  await page.keyboard.press('Enter');
  await answered(page);
  assert.equal(await focused(), 'answer');
  assert.match(await page.textContent('#body'), /kN/);
  await tabTo('situation');
  assert.deepEqual(faults, []);
  await page.close();
});

test('front page names the line of a fault and goes there', async () => {
  const { page } = await open('/', widths[0][1]);
  await loaded(page);
  const text = await page.inputValue('#plan');
  await page.fill('#plan', text.replace(/^basis: .*$/m, 'basis: none-such'));
  await page.click('#check');
  await answered(page);
  const button = page.getByRole('button', { name: /^Go to line \d+$/ }).first();
  const line = Number((await button.textContent()).match(/\d+/)[0]);
  await button.click();
  const chosen = await page.evaluate(() => {
    const box = document.getElementById('plan');
    return box.value.slice(box.selectionStart, box.selectionEnd);
  });
  assert.equal(chosen, 'basis: none-such');
  assert.equal((await page.inputValue('#plan')).split('\n')[line - 1], chosen);
  assert.match(await page.textContent('#body'), /Nothing was checked/);
  await page.close();
});

test('texts of a plan are shown as texts', async () => {
  const { page, faults } = await open('/', widths[0][1]);
  await loaded(page);
  const text = await page.inputValue('#plan');
  await page.fill('#plan', text.replaceAll('A1', '"<img src=x onerror=alert(1)>"'));
  await page.click('#check');
  await answered(page);
  assert.match(await page.textContent('#body'), /<img src=x onerror=alert\(1\)>/);
  assert.equal((await page.$$('#body img')).length, 0);
  assert.deepEqual(faults.filter((fault) => !fault.includes('status of 422')), []);
  await page.close();
});
