/** What is wrong with an input: what stood there, where, and what would do. */
export const problemsEn = {
  'tell.whole': 'the input',
  'tell.other': '{path}: {found} ({code}); wanted: {wanted}.',
  'tell.because': 'Why: {reason}.',
  'problem.missing': '{path} is missing: it wants {wanted}.',
  'problem.wrong-type': '{path} is {found}; it wants {wanted}.',
  'problem.too-big': '{path} is {found}, which is too much; it wants {wanted}.',
  'problem.too-small': '{path} is {found}, which is too little; it wants {wanted}.',
  'problem.not-one-of': '{path} is {found}; it must be one of: {wanted}.',
  'problem.out-of-bounds': '{path} is {found}; it wants {wanted}.',
  'problem.not-valid': '{path} is {found}: {wanted}.',
  'problem.unknown-field': 'There is no place for {found} (at {path}); check its spelling or leave it out.',
  'problem.unknown-material': '“{found}” (at {path}) is no material the program knows. Nearest: {wanted}.',
  'problem.which-material': '“{found}” (at {path}) may be one of several. Say which: {wanted}.',
  'problem.like-what': 'It is not known what {found} is like: say which known material it is most like.',
  'problem.unknown-crop': '“{found}” (at {path}) is no crop the program knows. Nearest: {wanted}.',
  'problem.cover-crop': '{found} (at {path}) is a cover crop: it has no harvest. Say it as what grew before.',
  'problem.bed-absurd-rate':
    'What was put on would lie {found} m deep over the bed, and no bed is deeper than {wanted} m. Check the amounts and the area.',
  'problem.unknown-measure': '“{found}” (at {path}) is no measure the program knows. It knows: {wanted}.',
  'problem.unknown-calculation': 'There is no calculation “{found}”. There are: {wanted}.',
  'problem.no-solver': 'The solver is not loaded, so {path} can’t be worked out here; it wants {wanted}.',
} as const;
