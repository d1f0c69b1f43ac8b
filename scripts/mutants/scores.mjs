/** What a report says of each file, as it is kept: how many were noticed, and every one that was not. */

/** @returns by file: killed, timedOut and the survivors, with the text that was changed and what stood there instead */
export function scoresIn({ files }) {
  return Object.fromEntries(Object.entries(files).map(([file, report]) => [file, scoreOf(report)]));
}

function scoreOf({ source, mutants }) {
  const lines = source.split('\n');
  const count = (...statuses) => mutants.filter(({ status }) => statuses.includes(status)).length;
  return {
    killed: count('Killed', 'RuntimeError', 'CompileError'),
    timedOut: count('Timeout'),
    alive: mutants
      .filter(({ status }) => status === 'Survived' || status === 'NoCoverage')
      .sort(
        (one, other) =>
          one.location.start.line - other.location.start.line ||
          one.location.start.column - other.location.start.column,
      )
      .map(({ location, replacement, status }) => ({
        line: lines[location.start.line - 1].trim(),
        from: oneLine(textAt(lines, location)),
        to: oneLine(replacement ?? ''),
        ...(status === 'NoCoverage' ? { noTest: true } : {}),
      })),
  };
}

function textAt(lines, { start, end }) {
  if (start.line === end.line) return lines[start.line - 1].slice(start.column - 1, end.column - 1);
  return [
    lines[start.line - 1].slice(start.column - 1),
    ...lines.slice(start.line, end.line - 1),
    lines[end.line - 1].slice(0, end.column - 1),
  ].join('\n');
}

const oneLine = (text) => {
  const flat = text.replace(/\s+/g, ' ').trim();
  return flat.length > 90 ? `${flat.slice(0, 89)}…` : flat;
};
