/** Links as they were given away, with the names of their wells. Each stays here for ever; none is made anew. */
// prettier-ignore
export const OLD_LINKS: readonly (readonly [title: string, link: string])[] = [
  ['Tamarack Ridge cabin', 'w1.a5xJGy2tR0vr0dJ6tLQeLa2HQmkNAA'],
  ['Heron Flats farmhouse', 'w1.QVYxG-0-jXafRrtPo92n0e7TaPdptPs0CLpPAA'],
  ['Willow Dale farm', 'w1.7sgQG53MG53MG53MG53MG53MG53MG53MG_KTeQA'],
  ['Palo Amargo guest house', 'w1.zpNpGx39Gx39Gx39Gx39Gx39Gx39G4KjfwA'],
  ['Slate Hollow homestead', 'w1.kDVGG12AMboAY3QBxugCjNEFGENnAQYA'],
  ['Dune Meadow', 'w1.HEvtpdrBDYAgDAXQnUyM8e7VcTy6ux-oLWKrLSwACuXlB-rRejsQ3Xb0XGCVLTqnTzoVHcGD3QmgxXJ5VaDiFATz5N6kTcOVbH2PJawQQxyccTDe7QG5aG0eVtr7JjsuPiJ4xooI-sy4ECj_RghI3iPETMANARGJhOkNqKxXnQnTfUbZbPXy5-kGWjticvQ5wX_1l5Dw9pmK67wA'],
];
