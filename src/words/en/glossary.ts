/**
 * Words of the trade, each told in a sentence or two to somebody who has never seen a well. What they mean is common usage in
 * extension sheets on wells and in the pump trade, no source.
 */
export interface Entry {
  /** As it stands in our sentences, in small letters: every form of it. */
  readonly forms: readonly string[];
  readonly means: string;
}

const entry = (forms: string, means: string): Entry => ({ forms: forms.split('|'), means });

export const GLOSSARY: readonly Entry[] = [
  entry('static level|static water level|static', 'How deep the water stands when no pump has run for hours.'),
  entry('pumping level|pumping water level', 'How deep the water stands while the pump runs. It is always lower.'),
  entry('drawdown', 'How far the water falls from its level at rest while the pump runs.'),
  entry(
    'total dynamic head',
    'How high the pump has to push, in all: lift, pressure at the tap, and rubbing in the pipe.',
  ),
  entry(
    'shut-off pressure|shut-off head',
    'With all taps closed, the pump pushes as hard as it can, and no water moves.',
  ),
  entry('cut-in', 'The pressure at which the switch starts the pump.'),
  entry('cut-out', 'The pressure at which the switch stops the pump.'),
  entry('pre-charge|precharge', 'The air pressure in the tank while it holds no water.'),
  entry('submergence|submerged', 'How much water stands over the pump’s intake.'),
  entry('specific capacity', 'How much flow the well gives for each foot or metre that its water falls.'),
  entry('transmissivity', 'How well the ground lets water through to the well.'),
  entry('cone of depression', 'The dip in the water of the ground round a well that is pumped.'),
  entry('operating point', 'The flow that this pump gives in this well, with these pipes.'),
  entry('upthrust', 'A pump that gives too much flow lifts its own wheels and wears them out.'),
  entry('flow sleeve|shroud', 'A pipe round the motor. It leads the water along the motor, to cool it.'),
  entry(
    'pitless adapter|pitless',
    'A fitting through the wall of the casing, below frost. The pipe to the house starts there.',
  ),
  entry('sanitary seal|well seal', 'A lid that seals the top of the casing, with holes for pipe and wires.'),
  entry('grout', 'Cement or clay between casing and ground. It keeps dirty water out.'),
  entry('annulus', 'The ring of room between two pipes, or between casing and ground.'),
  entry('liner', 'A narrower casing that hangs inside the first, deeper down.'),
  entry('drive shoe', 'A hard ring at the foot of a casing that was driven in.'),
  entry('gravel pack', 'Gravel round a screen. It holds back sand.'),
  entry('insert fitting', 'A piece with ridges that is pushed into soft pipe and held by clamps.'),
  entry('barb|barbs', 'The ridges on a fitting that hold inside soft pipe.'),
  entry('nipple', 'A short pipe with a thread at both ends.'),
  entry('torque arrestor', 'A rubber ball above the pump. It keeps the pump from twisting in the well as it starts.'),
  entry('splice', 'Where two wires are joined. In a well it is sealed against water.'),
  entry('AWG|wire gauge', 'How thick a wire is. A smaller number is a thicker wire.'),
  entry('bond|bonded|bonding', 'Metal parts joined by a wire to the ground wire, so that none can give a shock.'),
  entry('air lift', 'Water blown up with air. It tells roughly how much comes, and nothing of the level.'),
  entry('bailer', 'A bucket on a line that takes water out of a well to test it.'),
  entry('yield', 'How much water the well gave when it was tested.'),
  entry('drain-back', 'Water that runs back down as the pump stops.'),
  entry('check valve|check valves', 'A valve that lets water up and not back down.'),
  entry('relief valve', 'A valve that lets water out before the pressure grows too high.'),
  entry('casing', 'The pipe that lines the hole and keeps the ground out.'),
  entry('screen', 'Slotted pipe that lets water in and holds sand back.'),
  entry('intake', 'The holes at the pump’s middle where water goes in.'),
  entry('drop pipe', 'The pipe that the pump hangs on. It brings the water up.'),
  entry('string', 'All that hangs in the well: pipe, pump, wire and rope.'),
  entry('design factor', 'How many times stronger a thing is than its load.'),
  entry('water hammer', 'The blow in a pipe when moving water is stopped at once.'),
  entry('control box', 'A box on the wall that starts a motor with three power wires.'),
];

/** Longer ones first, so that "static water level" is no "static". */
const FORMS = GLOSSARY.flatMap(({ forms, means }) => forms.map((form) => ({ form, means }))).sort(
  (a, b) => b.form.length - a.form.length,
);
const MEANINGS: ReadonlyMap<string, string> = new Map(FORMS.map(({ form, means }) => [form.toLowerCase(), means]));
const ANY = new RegExp(`(?<![\\w-])(?:${FORMS.map(({ form }) => form).join('|')})(?![\\w-])`, 'gi');

export interface Gloss {
  readonly text: string;
  /** Null for words between. */
  readonly means: string | null;
}

/** A text in pieces: each word of the trade where it comes first, and what stands between. */
export function glossed(text: string): readonly Gloss[] {
  const pieces: Gloss[] = [];
  const told = new Set<string>();
  let from = 0;
  for (const match of text.matchAll(ANY)) {
    const means = MEANINGS.get(match[0].toLowerCase()) ?? null;
    if (means === null || told.has(means)) continue;
    told.add(means);
    if (match.index > from) pieces.push({ text: text.slice(from, match.index), means: null });
    pieces.push({ text: match[0], means });
    from = match.index + match[0].length;
  }
  if (from < text.length) pieces.push({ text: text.slice(from), means: null });
  return pieces;
}
