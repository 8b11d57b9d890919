/** What is wrong with an input: what stood there, where, and what would do. */
export const problemsEn = {
  'tell.whole': 'the input',
  'tell.other': '{path}: {found} ({code}); wanted: {wanted}.',
  'tell.because': 'Why: {reason}.',
  'place.body': 'what was written',
  'place.carbonToNitrogen': 'a C:N',
  'place.nitrogen_pctDry': 'nitrogen in percent of the dry stuff',
  'place.density_kgPerM3AsIs': 'a weight loose, in kilograms to the cubic metre,',
  'place.densityPacked_kgPerM3AsIs': 'a weight pressed down, in kilograms to the cubic metre,',
  'place.wet_g': 'the weight before drying',
  'place.dry_g': 'the weight after drying',
  'place.container_g': 'the weight of the dish',
  'place.compost_pctVolume': 'the share of compost',
  'problem.more-than-sown':
    '{found} came up, and {wanted} were sown in each pot. Count again, or say how many were sown.',
  'problem.missing': '{path} is missing: it wants {wanted}.',
  'problem.wrong-type': '{path} is {found}; it wants {wanted}.',
  'problem.too-big': '{path} is {found}, which is too much; it wants {wanted}.',
  'problem.too-small': '{path} is {found}, which is too little; it wants {wanted}.',
  'problem.not-one-of': '{path} is {found}; it must be one of: {wanted}.',
  'problem.heap-gone': 'Nothing is left of “{found}”.',
  'problem.cannot-be-followed':
    'This heap can’t be followed: it is so thin or so dry that its outside changes by the second. More stuff, more water or a narrower place would do.',
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
  'problem.unknown-measure':
    '“{found}” (at {path}) is no measure the program knows. Nearest: {wanted}. What would do as well is a weight or a volume: 20kg, 40L.',
  'problem.unknown-calculation': 'There is no calculation “{found}”. There are: {wanted}.',
  'problem.when-ahead':
    'The time “{found}” lies ahead: only what has happened is written down. If the year was meant otherwise, write it again.',
  'problem.water-beyond':
    '{found} L at one go is more than anyone pours on a heap: at most {wanted} L. Is it a slip of the pen?',
  'problem.figure-beyond': 'No stuff has {path} of {found}; what would do is {wanted}. Is it a slip of the pen?',
  'problem.area-beyond':
    'No bed, and no crop on one, has {found} m²: what would do is {wanted} m². Is it a slip of the pen?',
  'problem.depth-beyond': 'No bed is worked {found} m deep: what would do is {wanted} m. Is it a slip of the pen?',
  'problem.no-solver': 'The solver is not loaded, so {path} can’t be worked out here; it wants {wanted}.',
} as const;
