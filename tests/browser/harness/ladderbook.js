// The program under test: one that already runs, named by LADDERBOOK_URL, or one started here.

import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));
const TARGET = process.env.CARGO_TARGET_DIR ?? `${ROOT}target`;

export const PROGRAM = process.env.LADDERBOOK ?? `${TARGET}/debug/ladderbook`;

/** Long enough for a demo book to be made on a slow computer. */
const PATIENCE_MS = 120_000;

/**
 * Starts `ladderbook` with these words and waits for the first web address that it prints.
 * Answers with that address and a `stop` that ends the program.
 */
export async function start(...words) {
  if (process.env.LADDERBOOK_URL) return { url: process.env.LADDERBOOK_URL, stop: async () => {} };
  const program = spawn(PROGRAM, words, { stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise((resolve) => program.once('exit', resolve));
  const stop = async () => {
    program.kill('SIGTERM');
    await ended;
  };
  try {
    return { url: await firstAddress(program), stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

function firstAddress(program) {
  return new Promise((resolve, reject) => {
    const late = setTimeout(() => reject(new Error('ladderbook printed no address in time')), PATIENCE_MS);
    program.once('error', reject);
    program.once('exit', (code) => reject(new Error(`ladderbook ended with ${code} before it printed an address`)));
    createInterface({ input: program.stdout }).on('line', (line) => {
      const address = line.match(/http:\/\/\S+/);
      if (address) {
        clearTimeout(late);
        resolve(address[0]);
      }
    });
  });
}
