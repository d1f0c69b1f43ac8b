/** Text in lines of at most so many characters, each indented; a word that is longer stands by itself. */
export function wrapped(text: string, most: number, indent: string): readonly string[] {
  if (text === '') return [];
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && indent.length + line.length + 1 + word.length > most) {
      lines.push(indent + line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, indent + line];
}
