// Draws the pictures that the README and the first page show, from the first sample.
import { execFileSync } from 'node:child_process';

const SAMPLE = 'static/samples/tamarack-ridge.json';
const PICTURES = {
  'tamarack-ridge': [],
  'first-light': ['--view', 'section', '--theme', 'light'],
  'first-dark': ['--view', 'section', '--theme', 'dark'],
};

for (const [name, options] of Object.entries(PICTURES))
  execFileSync('node', ['dist/node/wellcut.js', 'draw', SAMPLE, ...options, '-o', `static/pictures/${name}.svg`]);
