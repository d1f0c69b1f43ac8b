/** What is told in sentences rather than behind labels: "drilled to 405 feet", "the water rose to 35 ft". */
import type { Fact } from './labels.ts';

export interface Told {
  readonly fact: Fact;
  /** Its first group holds the number of the quantity. */
  readonly pattern: RegExp;
  /** As a form would call it. */
  readonly name: string;
}

const told = (fact: Fact, pattern: string, name = ''): Told => ({ fact, pattern: new RegExp(pattern, 'g'), name });
const GAP = String.raw`[^«».;]{0,40}?`;

/** Of two that take the same quantity the earlier one has it. */
export const TOLD: readonly Told[] = [
  // A bound is no advice, and what was, or will be, does not hang there now.
  told(
    'aside',
    String.raw`(?:do not|don't|never|maximum|max\.?|no deeper than)\b[^«».;]{0,30}(?:pump|set)[^«».;]{0,24}«L(\d+)»`,
  ),
  told(
    'aside',
    String.raw`(?:will be|to be|used to be|last owner|previous|old pump|pulled|raised)\b[^.;]{0,50}?«L(\d+)»`,
  ),
  told(
    'recommendedDepth',
    String.raw`(?:said to|told (?:us|me) to|would|opinion)\b[^«».;]{0,40}pump[^«».;]{0,24}«L(\d+)»`,
  ),
  told('aside', String.raw`pumped dry\b[^.;]{0,30}?«F(\d+)»`),
  told('recommendedDepth', String.raw`(?:recommend|suggest|should|advise)${GAP}(?:pump|set|hang)${GAP}«L(\d+)»`),
  told('recommendedRate', String.raw`(?:recommend|suggest|should)${GAP}«F(\d+)»`),
  told(
    'testIntake',
    String.raw`(?:test pump|drill (?:stem|pipe|rods?)|air (?:line|pipe|hose)|stem|bailer)${GAP}(?:at|to|from)\s+«L(\d+)»`,
  ),
  told('firstWater', String.raw`(?:first|some|little)\s+(?:sign of |show of )?water${GAP}«L(\d+)»`),
  told('firstWater', String.raw`(?:hit|struck|encountered|found|got)\s+(?:our |the )?(?:first )?water${GAP}«L(\d+)»`),
  told('soundedDepth', String.raw`(?:sounded|sounds)${GAP}«L(\d+)»`),
  told(
    'static',
    String.raw`water${GAP}(?:stands?|stood|came up|comes up|rose|rises|sits|rests|is standing|settled|level is|level was)${GAP}«L(\d+)»`,
  ),
  told('static', String.raw`«L(\d+)»\s+(?:down )?to (?:the )?water`),
  told('static', String.raw`static${GAP}«L(\d+)»`),
  told(
    'drawdown',
    String.raw`(?:drew|drawn|pulled|dropped|fell|lowered|went)\s+(?:it |the water |the level |water )?(?:down )?(?:by )?«L(\d+)»`,
  ),
  told(
    'pumpingLevel',
    String.raw`(?:drew|drawn|pulled|dropped|fell|lowered|went|drawdown)\s+(?:it |the water |the level |water )?(?:down )?to\s+«L(\d+)»`,
  ),
  told(
    'pumpDepth',
    String.raw`pump\b[^.;]{0,60}?(?:set|hung|hangs|installed|placed)\s+(?:at |to |in at )?(?:a depth of )?«L(\d+)»`,
  ),
  told(
    'pumpDepth',
    String.raw`(?:hung|hang|set|put|placed)\s+(?:the |your |a |new |it ){0,3}(?:submersible )?pump (?:at|to)\s*«L(\d+)»`,
  ),
  told(
    'pumpDepth',
    String.raw`pump\s+(?:is |was |now |hangs? |hung |set |installed |placed |sits )+(?:at|to|in)?\s*(?:a depth of )?«L(\d+)»`,
  ),
  told(
    'casingBottom',
    String.raw`(?:casing|cased|pipe)\s+(?:was |is |goes |set |runs |extends |driven |installed |down )*(?:to|at)\s+(?:a depth of )?«L(\d+)»`,
  ),
  told('casingBottom', String.raw`«L(\d+)»\s+of\s+«S\d+»${GAP}casing`, 'casing length'),
  told('casingBottom', String.raw`«L(\d+)»\s+of\s+(?:steel |pvc |plastic )?casing`, 'casing length'),
  told(
    'casingSize',
    String.raw`«S(\d+)»\s*(?:dia\w*\.?\s+|i\.?d\.?\s+|o\.?d\.?\s+|nominal\s+)?(?:steel |pvc |plastic |stainless steel |heavy |new |well |galvani[sz]ed )*(?:casing|pipe\b)`,
  ),
  told('casingHeight', String.raw`casing\s+(?:sticks?|stands?|comes?) up\s+(?:about )?«[LS](\d+)»`),
  told(
    'casingHeight',
    String.raw`«[LS](\d+)»\s+(?:of casing )?(?:above|out of) (?:the )?(?:ground|grade|land surface)`,
  ),
  told('casingBottom', String.raw`casing\b:?\s*«L(\d+)»\s+of\b`, 'casing length'),
  told('casingSize', String.raw`cas(?:ed|ing)\b[^.;]{0,30}?with\s+«[SN](\d+)»\s+(?:steel|pvc|plastic|casing|pipe)`),
  told('casingSize', String.raw`casing\b:?\s*«L\d+»\s+of\s+«S(\d+)»`),
  told(
    'casingBottom',
    String.raw`casing\b(?:(?!liner|screen|static|depth)[^.;]){0,50}?\bto\s+(?:a depth of )?«L(\d+)»`,
  ),
  told('casingBottom', String.raw`casing:\s*«L(\d+)»`),
  told('casingSize', String.raw`casing\s*(?:of|is|was|:)?\s*«S(\d+)»`),
  told('holeSize', String.raw`«S(\d+)»\s*(?:open |rock |bore)?\s?hole`),
  told('depth', String.raw`«L(\d+)»\s+deep\b(?! (?:frost|pump|casing|grout))`),
  told('depth', String.raw`(?:completed|finished|bottomed)${GAP}(?:at|to)\s+(?:a depth of )?«L(\d+)»`),
  told(
    'depth',
    String.raw`(?:drilled|went|hole|well is|well was|well goes|bored|dug)\s+(?:down |out |on )?to\s+(?:a (?:total |final )?depth of )?«L(\d+)»`,
  ),
  told('depth', String.raw`(?:total |final )?depth of\s+«L(\d+)»`),
  told('testHours', String.raw`(?:for|after)\s+(?:about )?«T(\d+)»`),
  told('testRate', String.raw`(?:pump|pumping|bailer|well|capacity|air)\s*test[^.;]{0,40}?«F(\d+)»`),
  told('testHours', String.raw`test[^.;]{0,20}?«T(\d+)»`),
  told('testRate', String.raw`(?:pump|pumping|bailer|well|capacity|air)\s*test[^.;]{0,40}?«F(\d+)»`),
  told('testHours', String.raw`test[^.;]{0,20}?«T(\d+)»`),
  told('testRate', String.raw`(?:pumped|bailed|tested|pumping)${GAP}(?:at|for)?\s*«F(\d+)»`),
  told('yield', String.raw`(?:yield|produc|giv|gave|mak|made|deliver|blew|blown|good for|get|got)\w*${GAP}«F(\d+)»`),
  told('artesianFlow', String.raw`\bflow(?:s|ing)?\b${GAP}«F(\d+)»`),
  told(
    'pitless',
    String.raw`pitless(?: adapter)?\s*(?:is |was |at |set |installed |depth |:){0,4}\s*(?:at )?«[LS](\d+)»`,
  ),
  told('pumpPower', String.raw`«H(\d+)»`),
];
