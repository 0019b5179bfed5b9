// A phone held upright, with touch, drawn by headless Chromium; and the pictures it takes.

import { mkdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';
const PICTURES = fileURLToPath(new URL('../../../target/pictures/', import.meta.url));

// Chromium is to ask nobody for anything; as root it can't use its sandbox.
const QUIET = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const UPRIGHT = { width: 390, height: 844 };
export const LYING = { width: 844, height: 390 };

export function openBrowser() {
  return chromium.launch({ executablePath: CHROMIUM, headless: true, args: QUIET });
}

/**
 * A new page of its own, as a phone shows it. `page.trouble` gathers what should never happen while it is open: errors of
 * scripts, refusals of the content policy, questions to any other computer.
 */
export async function openPhone(browser, { viewport = UPRIGHT, ...more } = {}) {
  const phone = await browser.newContext({
    viewport,
    deviceScaleFactor: 2,
    isMobile: true,
    hasTouch: true,
    ...more,
  });
  return watched(await phone.newPage());
}

/** A new page of its own, as a computer shows it. */
export async function openDesk(browser, more = {}) {
  const desk = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...more });
  return watched(await desk.newPage());
}

function watched(page) {
  page.trouble = [];
  page.on('pageerror', (error) => page.trouble.push(`a script failed: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') page.trouble.push(`the browser complains: ${message.text()}`);
  });
  page.on('request', (request) => {
    const { hostname, protocol } = new URL(request.url());
    const here = ['127.0.0.1', 'localhost', '[::1]'].includes(hostname) || ['data:', 'blob:'].includes(protocol);
    if (!here) page.trouble.push(`it asks another computer: ${request.url()}`);
  });
  return page;
}

/** Takes a picture of the whole page into target/pictures and answers with its path. */
export async function picture(page, name) {
  await mkdir(PICTURES, { recursive: true });
  const path = `${PICTURES}${name}.png`;
  await page.screenshot({ path, fullPage: true, animations: 'disabled' });
  return path;
}
