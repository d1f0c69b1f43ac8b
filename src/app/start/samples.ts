/** The sample wells that come with the program, all of invented places. Fetched when asked for. */
export interface Sample {
  /** Name under samples/. */
  readonly file: string;
  readonly title: string;
  readonly about: string;
}

export const SAMPLES: readonly [Sample, ...Sample[]] = [
  {
    file: 'tamarack-ridge',
    title: 'Tamarack Ridge cabin',
    about: 'A rock well where frost goes deep. The pipe leaves below the frost.',
  },
  {
    file: 'heron-flats',
    title: 'Heron Flats farmhouse',
    about: 'A screened well in sand and gravel, reported in metres.',
  },
  {
    file: 'willow-dale',
    title: 'Willow Dale farm',
    about: 'A valley farm with pipe, casing and wire in millimetres, 50 Hz and bar.',
  },
  {
    file: 'palo-amargo',
    title: 'Palo Amargo guest house',
    about: 'A warm country without frost. The pipe leaves through a seal on top.',
  },
  {
    file: 'slate-hollow',
    title: 'Slate Hollow homestead',
    about: 'Deep and low-yield. The driller only blew it with air, so much is not known.',
  },
];
