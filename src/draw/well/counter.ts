/** "screen", "screen/2": names stay while depths are dragged. */
export function counter(): (word: string) => string {
  const times = new Map<string, number>();
  return (word) => {
    const n = (times.get(word) ?? 0) + 1;
    times.set(word, n);
    return n === 1 ? word : `${word}/${n}`;
  };
}
