/** "Which pump" and "Which tank": names, reasons, refusals. */
import type { Ask, InTheWay, PumpName, Supply, Told, WhyRow } from '../../model/choose/choosePump.ts';
import type { TankReach, TankRefusal, WhyTank } from '../../model/choose/chooseTank.ts';
import type { Choice, LeftStanding } from '../../model/choose/choosing.ts';
import type { PasteFault } from '../../model/choose/pastedCurve.ts';
import type { Show } from '../../model/units.ts';
import { decimals } from '../../model/units.ts';
import { listed, span } from './phrases.ts';

type Said<Union extends { readonly variant: string; readonly numbers: object }> = {
  readonly [Each in Union as Each['variant']]: (numbers: Each['numbers'], show: Show) => string;
};

const times = (share: number): string => decimals(share, 1);
/** Past a limit, and read so: rounded away from it where the second decimal would be the limit’s own. */
const apart = (share: number, limit: number): string => {
  const text = decimals(share, 2);
  return text === times(limit) ? decimals(share > limit ? limit + 0.01 : limit - 0.01, 2) : text;
};
/** Never rounded up to a limit that it misses. */
export const percentUnder = (share: number): string => `${decimals(Math.floor(share * 100 + 1e-9), 0)} %`;
function nameOf(name: PumpName): string {
  switch (name.kind) {
    case 'rating':
      return `${name.flow}, ${name.power}`;
    case 'own':
      return name.name;
    case 'plan':
      return 'The pump of this plan';
  }
}
/** Which do without what stands in the way. */
const then = (able: readonly PumpName[]): string => {
  const names = able.map(nameOf);
  if (names.length === 0) return 'some of these may do';
  return names.length > 2
    ? `${names.length} of these do, first ${names[0] ?? ''}`
    : `${listed(names)} ${names.length === 1 ? 'does' : 'do'}`;
};
const column = { flow: 'flow', head: 'head' } as const;

export const choose = {
  what: 'Every usual pump in this well, with the depth, pipe and wire that it needs; the best first.',
  working: 'Trying the pumps in this well …',
  chosen: (name: string) => `Chosen: ${name}.`,
  /** On the command line, which tells no finding beside the tables. */
  asItIs: (inAll: string) =>
    `The plan as it is: ${inAll.charAt(0).toLowerCase()}${inAll.slice(1)} Check it without --choose to read them.`,
  nothingChosen: 'Nothing was changed.',
  step: (name: string) => `Choose ${name}`,
  pumps: {
    fillIn: 'Fill in:',
    title: 'Which pump',
    /** Heads of the columns, in their order. */
    columns: {
      name: 'Pump',
      does: 'Does it do the job',
      flow: 'Flow with the water lowest',
      share: 'Of what is wanted',
      spare: 'To spare over cut-out',
      lifts: 'Deepest water it lifts',
      left: 'Water left over the intake',
      range: 'Place in its range',
      pipe: 'Drop pipe',
      wire: 'Wire and supply',
      weight: 'Weight at rest',
      tank: 'Tank it needs',
      depth: 'Pump intake',
    },
    /** Of the same where the pump fills an open tank, which has no pressure. */
    intoTank: { flow: 'Flow into the tank' },
    /** Of the narrow table. */
    short: { flow: 'Flow, water lowest', spare: 'Over cut-out', left: 'Over intake' },
    all: (count: number) => `Show all ${count} pumps`,
    fewer: 'Show fewer',
    everyColumn: 'Compare every column',
    choose: (name: string) => `Choose ${name}`,
    itIs: 'This is the pump of the plan, with the pipe and wire that it needs.',
    picture: 'What a pump of this name gives, against what the well asks for at cut-in with the water at',
    bandKey: 'what a pump of this name gives',
    levels: { static: 'water at rest', usual: 'usual pumping level', lowest: 'lowest water' },
    does: { yes: 'Yes', works: 'Works, but', depends: 'Depends', no: 'No' },
    name: nameOf,
    plans: 'now in the plan',
    controlBox: 'control box',
    drive: 'motor and wires as the drive’s maker asks',
    /** Of a row that plans dry-run protection: in its cell, and as a sentence. */
    probe: (depth: string) => `probe at ${depth}`,
    protection: 'dry-run protection by current',
    withProbe: (depth: string) => `With dry-run protection, a probe at ${depth}.`,
    withProtection: 'With dry-run protection by current.',
    whys: {
      fits: ({ flow, spare, left }, show) =>
        `Gives ${show.flow(flow)}${spare === null ? '' : `, reaches cut-out with ${show.pressure(spare)} to spare`} and leaves ${show.depth(left)} of water over its intake.`,
      fromStore: ({ flow, gives, sure, level, full, valve }, show) => {
        const given =
          show.flow(full) === show.flow(flow)
            ? `Gives ${show.flow(flow)} even with the bore drawn down to ${show.depth(level)}.`
            : `Gives ${show.flow(full)} from the full bore and still ${show.flow(flow)} with it drawn down to ${show.depth(level)}.`;
        const well =
          sure < gives
            ? `The well itself gives ${span(sure, gives, show.flow)}: measure what it gives to a pump.`
            : `The well itself gives ${show.flow(gives)}.`;
        const past = valve === null ? '' : ' While the bore is full it runs past its best range';
        const held = valve === null ? '' : valve > 0 ? `: fit a flow-limiting valve of ${show.flow(valve)}.` : '.';
        return `${given} ${well}${past}${held}`;
      },
      yieldUnsure: ({ gives }, show) =>
        `Does if the well gives the ${show.flow(gives)} that air blew out of it: measure what it gives to a pump.`,
      ifDemand: ({ flow, wanted }, show) =>
        `Gives ${show.flow(flow)}: enough if the house draws ${show.flow(wanted)}, which is assumed.`,
      ifPeak: ({ flow, peak }, show) =>
        `Gives ${show.flow(flow)}: enough to fill the open tank in 8 hours a day. That carries a peak of ${show.flow(peak)}, which is assumed.`,
      dependsOnDemand: ({ flow }, show) => `Gives ${show.flow(flow)}; nobody said what the house draws at its busiest.`,
      dependsOnLevel: ({ turn }, show) =>
        `Does while the water stays above ${show.depth(turn)}; under it, it may run on and never shut off. Measure while pumping how far it falls.`,
      unknownLevel: ({ level }, show) =>
        `Gives enough even with the water at ${show.depth(level)}; nobody knows how much stays over the intake.`,
      liftsNone: ({ rest, lifts }, show) =>
        lifts === null || !(lifts > 0)
          ? 'Does not fill the tank from any depth.'
          : lifts > rest
            ? `Too weak to draw the bore down: it stalls at ${show.depth(lifts)}.`
            : `Lifts water from ${show.depth(lifts)} at the most, and the water at rest stands at ${show.depth(rest)}.`,
      // Never rounded to the limit that it misses.
      lacksPressure: ({ spare, level, asked }, show) => {
        const [short, left, wanted] = [show.pressure(-spare), show.pressure(spare), show.pressure(asked)];
        if (spare < 0 && short === show.pressure(0))
          return `Too weak: just short of cut-out with the water at ${show.depth(level)}.`;
        if (spare < 0) return `Too weak: ${short} short of cut-out with the water at ${show.depth(level)}.`;
        return left === wanted
          ? `Reaches cut-out with a little under ${wanted} to spare; ${wanted} are wanted.`
          : `Reaches cut-out with ${left} to spare; ${wanted} are wanted.`;
      },
      givesLittle: ({ flow, wanted, fillsTank }, show) => {
        if (fillsTank)
          return `Gives ${show.flow(flow)}; ${show.flow(wanted)} fill the open tank in 8 hours a day, a tenth to spare.`;
        return show.flow(flow) === show.flow(wanted)
          ? `Gives a little under the ${show.flow(wanted)} that are wanted with a tenth to spare.`
          : `Gives ${show.flow(flow)}; with a tenth to spare ${show.flow(wanted)} are wanted.`;
      },
      takesTooMuch: ({ left, asked }, show) =>
        `Draws the water down to ${show.depth(Math.max(left, 0))} over its intake; ${show.depth(asked)} have to stay.`,
      outpumps: ({ gives }, show) =>
        gives === null
          ? 'Takes more than the well gives and draws it down to the intake.'
          : `Takes more than the ${show.flow(gives)} that the well gives.`,
      underRange: ({ range, least, open }) =>
        `Works at ${apart(range, least)} times its rated flow, under ${times(least)}: too ${open ? 'weak for this lift' : 'large for this house'}.`,
      overRange: ({ range, most }) =>
        `Works at ${apart(range, most)} times its rated flow, over ${times(most)}: too strong for this lift.`,
      tanksTogether: ({ water }, show) =>
        `Does if tanks together take ${show.volume(water)} at each start: no single usual one does.`,
      overAnyPipe: ({ need }, show) =>
        `It can press ${show.pressure(need)} on a drop pipe that nobody rated: no usual one bears that.`,
      farOver: ({ rated, house, gives, fillsTank }, show) =>
        `Named for ${show.flow(rated)} where ${show.flow(house)} ${fillsTank ? 'fill the open tank in 8 hours a day' : 'are wanted'}: too much for a well ${gives === null ? 'that nobody pumped' : `of ${show.flow(gives)}`}.`,
      unguarded: ({ gives }, show) => `Needs dry-run protection first: the well gives only ${show.flow(gives)}.`,
      storeTooSmall: ({ gives, wanted }, show) =>
        `The water in the bore does not carry the peak: ${show.flow(wanted)} wanted, ${show.flow(gives)} given.`,
      dayTooLittle: ({ aDay, need }, show) =>
        `No pump helps: the well gives ${show.volume(aDay)} a day, and ${show.volume(need)} are needed.`,
      // What the rules find says itself.
      finding: () => '',
    } satisfies Said<WhyRow>,
    /** Of a pump that works, and lacks what only choosing asks for. */
    works: {
      overRange: ({ range, most }) =>
        `Runs past its best range: ${apart(range, most)} times its rated flow; choosing asks for ${times(most)} at most.`,
      underRange: ({ range, least }) =>
        `Runs under its best range: ${apart(range, least)} times its rated flow; choosing asks for ${times(least)} at least.`,
      givesLittle: ({ flow, house, wanted, fillsTank }, show) =>
        `Gives ${percentUnder(flow / house)} of the ${show.flow(house)} ${fillsTank ? 'that fill the open tank in 8 hours a day' : 'wanted'}; choosing asks for ${decimals((wanted / house) * 100, 0)} %.`,
    } satisfies Partial<Said<WhyRow>>,
    /** What has to be known before the pump is bought. */
    asks: {
      powerTooSmall: ({ said, least }, show) =>
        `Its points ask for a motor of ${show.power(least)} or more, and ${show.power(said)} is said: read the nameplate.`,
      pastPoints: ({ flow, last }, show) =>
        `Only if it gives ${show.flow(flow)} there: its points end at ${show.flow(last)}. Add those that follow.`,
      testFlow: ({ flow }, show) =>
        `Only if that level was read at ${show.flow(flow)} or more: nobody said how much was pumped.`,
      power: () => 'Say the power of its motor first: wire, supply and control box follow from it.',
      pipeRating: ({ need }, show) =>
        `Only if the drop pipe bears ${show.pressure(need)}: read the rating that is printed on it.`,
      wellYield: ({ flow }, show) =>
        `Have the well pumped first: nobody said what it gives, and this pump may take ${show.flow(flow)}.`,
      openTank: () => 'Say how much the open tank holds: one that carries the peak wants no more than a small pump.',
      pumpWidth: ({ most }, show) =>
        `Only if the pump is ${show.bore(most)} wide or less: ask its maker for its width over the cable guard.`,
    } satisfies Said<Ask>,
    /** What its owner has to know besides. */
    told: {
      needsRelief: ({ reach, rating }, show) =>
        `Fit a relief valve: it can put ${show.pressure(reach)} on the tank, whose rating is ${show.pressure(rating)}.`,
      beyondYield: ({ flow, gives }, show) =>
        `At its strongest it takes ${show.flow(flow)}, and the well is said to give ${show.flow(gives)}: guard it against running dry.`,
    } satisfies Said<Told>,
    /** The motor was said to run on something else. */
    otherSupply: ({ voltage, wires }: Supply, now: Supply, show: Show): string => {
      const said = (supply: Supply) =>
        [
          ...(voltage === null || supply.voltage === null ? [] : [show.voltage(supply.voltage)]),
          ...(wires === null || supply.wires === null ? [] : [`a ${supply.wires}-wire motor`]),
        ].join(' and ');
      return `It needs ${said(now)}, not ${said({ voltage, wires })} as in the plan.`;
    },
    powerUnsaid: 'power unsaid',
    /** In the cell of a pipe of which nobody said what it bears. */
    toBear: (need: string) => `to bear ${need}`,
    /** The row hangs the pump elsewhere than the plan does. */
    moved: (from: string, to: string) => `Hung at ${to} instead of ${from}.`,
    /** Of what hangs on the hook: in its cell, and as a sentence. */
    rig: (load: string) => `${load}, needs a rig`,
    needsRig: (load: string) => `Needs a rig: ${load} hang on the hook.`,
    sand: 'Sand is reported: it wears pumps out. Find where it comes from, and ask for a pump that is made for sand.',
    watering: (flow: string) =>
      `The ${flow} for watering are not counted: say what house and watering draw together at the busiest.`,
    warm: (water: string, most: string) =>
      `The water is ${water}; motors are usually made for ${most}: ask the maker for one that stands it.`,
    none: 'None of these pumps does the job here.',
    /** None does with all that is to spare, and some work. */
    noneWithRoom: 'None of these pumps has all the room that choosing asks for; the first works.',
    inTheWay: {
      flowLimiter: ({ limit, able }, show) =>
        `The flow limiter of ${show.flow(limit)} stands in the way: without it ${then(able)}.`,
      noFlowLimiter: ({ limit, able }, show) =>
        `With a flow-limiting valve of ${show.flow(limit)} in the drop pipe ${then(able)}.`,
      noDepth: () =>
        'So no pump of this kind hangs right here: ask a licensed contractor which other kind would do, and never go down into the well.',
      // What the rules find says itself.
      doesNotPass: ({ finding }) =>
        finding.rule === 'PR-21'
          ? (finding.numbers as { readonly shortest?: boolean }).shortest === true
            ? 'A slimmer pump would do; another top may leave it more room.'
            : 'A slimmer pump would do; another adapter or top may leave it more room.'
          : 'A slimmer pump would do, or a bore that proves wider.',
      weakPipe: ({ material, threaded, able }) =>
        `The ${threaded ? `threaded ${material}` : material} drop pipe does not bear stronger pumps: with galvanized steel ${then(able)}, heavier to lift.`,
      newPipe: ({ rating, able }, show) =>
        `The drop pipe that hangs does not bear stronger pumps: with new PE of ${show.pressure(rating)} ${then(able)}.`,
      demand: ({ most, able }, show) => `If ${show.flow(most)} at the busiest is enough, ${then(able)}.`,
      frequency: ({ at }) =>
        `Nobody said whether the supply is 50 or 60 Hz: at ${at.length > 1 ? 'either' : `${at.join()} Hz`} some of these may do.`,
    } satisfies Said<InTheWay>,
    restsOn: (what: string) => `All of this rests on what is assumed: ${what}.`,
    caution:
      'A usual pump of that rating, by common practice: check the maker’s curve before you buy. Wiring is for a licensed electrician.',
  },
  tanks: {
    title: 'Which tank',
    columns: {
      name: 'Tank',
      does: 'Does it do the job',
      water: 'Water at each start',
      run: 'Runs at each start',
      hour: 'Starts an hour, at most',
      day: 'Starts a day, at most',
    },
    row: (water: string, hour: string, day: string | null) =>
      `${water} of water each time; at most ${hour} starts an hour${day === null ? '' : `, ${day} a day`}.`,
    choose: (name: string) => `Choose ${name}`,
    whys: {
      runsLong: ({ run }, show) => `Lets the pump run ${show.time(run)} at each start.`,
      runsNearly: ({ run, least }, show) =>
        `Lets the pump run ${show.time(run)} at each start; ${show.time(least)} are usual, and this tank is there.`,
      runsShort: ({ run, least }, show) =>
        `Lets the pump run ${show.time(run)} at each start; ${show.time(least)} are wanted.`,
      givesNone: () => 'Gives no water at this pre-charge: set its air first.',
      finding: () => '',
    } satisfies Said<WhyTank>,
    refused: {
      flowing: 'The well flows by itself: a licensed contractor first, then a tank.',
      openTank:
        'No pressure tank to choose: the pump fills an open one. Stop it by a float switch, never by a valve alone: against a closed pipe it bursts the pipe or burns. Give the tank an overflow.',
      variableSpeed: 'With variable speed a small tank as the controller’s maker asks for is enough.',
      pumpFirst: 'Choose the pump first: the tank follows from its flow.',
      powerFirst: 'Say the power of the pump’s motor first: large motors want longer runs, and so a larger tank.',
    } satisfies Record<TankRefusal, string>,
    precharge: (pressure: string) => `Set the air to ${pressure} in the empty tank, water shut off and drained.`,
    reach: ({ relief, ratingAssumed, isOver }: TankReach, reach: string, rating: string) => {
      if (relief === true) return `The pump can put ${reach} on it; a relief valve is there.`;
      const bears = ratingAssumed
        ? `${rating} is only assumed for its rating: read its plate`
        : `its rating is ${rating}`;
      const valve = relief === false ? 'There is no relief valve.' : 'Nobody said whether a relief valve is there.';
      return `The pump can put ${reach} on it; ${bears}. ${valve}${isOver ? ' Fit one: a tank over its rating can burst.' : ''}`;
    },
  },
  own: {
    title: 'Add a pump by its curve',
    name: 'Name',
    motor: 'Power of its motor, if you know it',
    flow: 'Flow in',
    head: 'Head in',
    columns: 'Flow and head from the maker’s sheet, one point a line',
    point: (flow: string, head: string) => `${flow}, ${head}`,
    readAs: (points: string) => `Read as ${points}.`,
    /** The highest pressure rests on it. */
    atNoFlow: (head: string) =>
      `The head at no flow is not among them: ${head} is taken. Add it if the sheet has it, since pipe and tank are judged by it.`,
    keep: 'Keep this pump',
    nameless: 'Give the pump a name.',
    taken: (name: string) => `There is a pump of the name ${name} already: take another name, or remove that one.`,
    power: 'Write the power with its unit, “3/4 hp” or “0.55 kW”, or leave it out.',
    kept: (name: string, points: number, lasting: boolean) =>
      `${name} is kept with the plan, with ${points} points${lasting ? ', and in this browser' : '; this browser cannot keep it'}.`,
    forget: (name: string) => `Remove ${name}`,
    step: (name: string) => `Add the pump ${name}`,
    forgetStep: (name: string) => `Remove the pump ${name}`,
  },
  /** What a choice left. */
  left: ({ choice, status }: LeftStanding): string => `${PART[choice]} stays: it is ${status}.`,
  paste: (fault: PasteFault): string => {
    switch (fault.what) {
      case 'empty':
        return 'Nothing is there to read: paste two columns, flow and head.';
      case 'tooLong':
        return `That is more than ${fault.most} characters: paste the two columns of one pump only.`;
      case 'noUnits':
        return `The ${column[fault.column]} has no unit: choose it above, or name it in the first line.`;
      case 'twoColumns':
        return `Line ${fault.line}, “${fault.text}”, has ${fault.found === 1 ? 'one column' : `${fault.found} columns`}: write a flow and a head, parted by a tab.`;
      case 'number':
        return `Line ${fault.line}: the ${column[fault.column]} “${fault.text}” is no number with a unit that is read here; write ${fault.column === 'flow' ? '“10 gpm” or “40 L/min”' : '“200 ft” or “60 m”'}.`;
      case 'comma':
        return `Line ${fault.line}: “${fault.text}” may be thousands or tenths; write it without a comma, “1400” or “1.4”.`;
      case 'swapped':
        return `No well pump lifts only ${fault.head}, with ${fault.flow}: are flow and head the wrong way round?`;
      case 'negative':
        return `Line ${fault.line}: the ${column[fault.column]} “${fault.text}” is negative; take the line out.`;
      case 'tooFew':
        return `There ${fault.found === 1 ? 'is one point' : 'is no point'}: a curve needs two or more lines.`;
      case 'tooMany':
        return `There are more than ${fault.most} points: leave some lines out.`;
      case 'sameFlow':
        return `Lines ${fault.other} and ${fault.line} have the same flow, ${fault.text}: keep one of them.`;
      case 'rises':
        return `Line ${fault.line}: its head is not under that of line ${fault.other}, though its flow is larger. Check both.`;
    }
  },
};

const PART: Readonly<Record<Choice, string>> = {
  pump: 'The pump',
  depth: 'Its depth',
  pipe: 'The drop pipe',
  wire: 'The wire',
  tank: 'The tank',
};
