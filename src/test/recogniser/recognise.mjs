// Writes reference.csv: what a general-purpose recogniser finds in each line of reference-sentences.txt.

import { readFileSync, writeFileSync } from 'node:fs';
import recognizers from '@microsoft/recognizers-text-suite';

const TABLES = new URL('../resources/org/misecue/spoken/', import.meta.url);
const CULTURE = 'en-us';
const PERIODS = { Y: 'Year', M: 'Month', W: 'Week', D: 'Day', TH: 'Hour', TM: 'Minute', TS: 'Second' };

const withUnit = (find) => [find.resolution.value, find.resolution.unit];
const plain = (find) => [find.resolution.value, ''];

/** A kind, who finds it, and the value and unit of a find; a find without a finite value is none. */
const KINDS = [
  ['dimension', recognizers.recognizeDimension, withUnit],
  ['temperature', recognizers.recognizeTemperature, withUnit],
  ['currency', recognizers.recognizeCurrency, withUnit],
  ['age', recognizers.recognizeAge, withUnit],
  ['percentage', recognizers.recognizePercentage, (find) => [find.resolution.value.replace('%', ''), '%']],
  ['duration', recognizers.recognizeDateTime, period],
  ['ordinal', recognizers.recognizeOrdinal, plain],
  ['number', recognizers.recognizeNumber, plain],
];

/** Of dates and times only durations count here: to this recogniser "twenty five" is also a time of day. */
function period(find) {
  const timex = find.resolution.values?.[0]?.timex ?? '';
  const [, t, value, letter] = /^P(T?)([\d.]+)([YMWDHS])$/.exec(timex) ?? [];
  return find.typeName.endsWith('.duration') && value ? [value, PERIODS[t + letter]] : [undefined, ''];
}

/** What lies within a longer find is part of it; of kinds that claim the same words the first of the list is kept. */
function isPart(find, all) {
  const length = (one) => one.end - one.start;
  return all.some(
    (other, index) =>
      other.start <= find.start &&
      other.end >= find.end &&
      (length(other) > length(find) || (length(other) === length(find) && index < all.indexOf(find))),
  );
}

function finds(sentence) {
  const all = KINDS.flatMap(([kind, recognise, read]) =>
    recognise(sentence, CULTURE).map((find) => {
      const [value, unit] = read(find);
      return { kind, start: find.start, end: find.end, text: find.text, value, unit };
    }),
  ).filter((find) => Number.isFinite(Number.parseFloat(find.value)));
  return all.filter((find) => !isPart(find, all)).sort((a, b) => a.start - b.start);
}

const cell = (text) => (/[",]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
const row = (...cells) => cells.map((text) => cell(String(text))).join(',');

const sentences = readFileSync(new URL('reference-sentences.txt', TABLES), 'utf8').trimEnd().split('\n');
const rows = sentences.flatMap((sentence) => {
  const found = finds(sentence);
  return found.length === 0
    ? [row(sentence, 'none', '', '', '', '')]
    : found.map((find) => row(sentence, find.kind, find.text, find.start, find.value, find.unit));
});
writeFileSync(new URL('reference.csv', TABLES), [row('sentence', 'kind', 'text', 'at', 'value', 'unit'), ...rows, ''].join('\n'));
