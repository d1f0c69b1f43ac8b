/** One direction, no way back: model <- words <- draw <- app, embed, cli, lib. */
module.exports = {
  forbidden: [
    {
      name: 'model-knows-nothing-above-it',
      severity: 'error',
      from: { path: '^src/model' },
      to: { path: '^src/(words|draw|app|embed|cli|lib|files)' },
    },
    {
      name: 'model-imports-only-zod',
      severity: 'error',
      from: { path: '^src/model' },
      to: { dependencyTypes: ['npm', 'npm-dev', 'core'], pathNot: '^node_modules/zod' },
    },
    {
      name: 'solving-carries-no-fixes',
      comment: 'what would mend a well is made for who asks, apart from what is wrong with it',
      severity: 'error',
      from: { path: '^src/(model/(solve\\.ts|(rules|figures|formulas|string|plan|tables|units)/)|draw/)' },
      to: { path: '^src/model/fixes/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'zod-only-where-a-plan-is-read',
      severity: 'error',
      from: { path: '^src', pathNot: '^src/model/plan/' },
      to: { path: '^node_modules/zod' },
    },
    {
      name: 'words-know-model-only',
      severity: 'error',
      from: { path: '^src/words' },
      to: { path: '^src/(draw|app|embed|cli|lib)' },
    },
    {
      name: 'words-take-types-and-units-of-the-model',
      comment: 'a language computes nothing: all that it says comes to it as names and numbers, and names of fields',
      severity: 'error',
      from: { path: '^src/words' },
      to: {
        path: '^src/model',
        pathNot: '^src/model/(units(/|\\.ts$)|plan/fields\\.ts$)',
        dependencyTypesNot: ['type-only'],
      },
    },
    {
      name: 'words-import-nothing-else',
      severity: 'error',
      from: { path: '^src/words' },
      to: { dependencyTypes: ['npm', 'npm-dev', 'core'] },
    },
    {
      name: 'draw-knows-model-and-words-only',
      severity: 'error',
      from: { path: '^src/draw' },
      to: { path: '^src/(app|embed|cli|lib)' },
    },
    {
      name: 'draw-carries-no-reasons',
      comment: 'of a language a drawing takes titles, amounts, names and labels, and what reads every language',
      severity: 'error',
      from: { path: '^src/draw' },
      to: {
        path: '^src/words/en/',
        pathNot: '^src/words/en/(short|atHouse)\\.ts$',
        dependencyTypesNot: ['type-only'],
      },
    },
    {
      name: 'brief-words-carry-no-reasons',
      comment: 'what a drawing says of a rule, and a page with its first drawing, stands apart from what explains it',
      severity: 'error',
      from: { path: '^src/words/en/(brief/|short|first)' },
      to: { path: '^src/words/en/(rules/|long)', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'draw-imports-nothing-else',
      severity: 'error',
      from: { path: '^src/draw' },
      to: { dependencyTypes: ['npm', 'npm-dev', 'core'] },
    },
    {
      name: 'sheet-knows-model-words-and-drawing',
      severity: 'error',
      from: { path: '^src/sheet' },
      to: { path: '^src/(app|embed|cli|lib|files)' },
    },
    {
      name: 'files-know-the-model-only',
      comment: 'the bytes of a file, as the page and the command line get them',
      severity: 'error',
      from: { path: '^src/files' },
      to: { path: '^src/(words|draw|app|embed|cli|lib)' },
    },
    {
      name: 'node-only-in-cli',
      severity: 'error',
      from: { path: '^src', pathNot: '^src/cli' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'cli-has-no-page',
      severity: 'error',
      from: { path: '^src/(cli|lib)' },
      to: { path: '^src/(app|embed)|^node_modules/svelte' },
    },
    { name: 'no-cycle', severity: 'error', from: {}, to: { circular: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      extensions: ['.ts', '.js', '.svelte', '.json'],
      conditionNames: ['svelte', 'browser', 'import', 'types', 'default'],
    },
  },
};
