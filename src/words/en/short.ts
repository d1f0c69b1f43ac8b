/** English as a drawing needs it: titles, amounts, names, labels. Reasons, sources and whole sentences are in `long.ts`. */
import { caption } from './caption.ts';
import { chips } from './chips.ts';
import { description } from './description.ts';
import { ends } from './ends.ts';
import { short as levels } from './levels.ts';
import { partLabels } from './partLabels.ts';
import { section } from './section.ts';
import { sheet } from './sheet.ts';
import { shortRules } from './shortRules.ts';

export const short = { rules: shortRules, ends, levels, sheet, caption, description, section, chips, partLabels };
