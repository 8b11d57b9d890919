/** What amounts of stuff want before they rot hot: water, or dry stuff, and nitrogen. */
export const needsEn = {
  'needs.stuff':
    'All of it ({stuff}): {mass}, {volume} as it lies, about {water, number} % water, carbon to nitrogen about {ratio}.',
  'needs.ratio': '{likely, number} ({low, number} to {high, number})',
  'needs.ratio.none': 'unknown, for nothing in it brings nitrogen',
  'needs.weigh':
    'The weight decides most here and is guessed: weigh three bags or buckets of it, and give the weight instead.',
  'needs.water.add-water':
    'To bring it to {goal, number} % water it takes {water}: wet it as you fill, not from the top, and again the next day. Stop when a squeezed handful drips.',
  'needs.water.rain': 'Rain does little of that: {rain} of it is {water}.',
  'needs.water.right': 'It is as wet as it should be.',
  'needs.water.too-wet':
    'It is too wet by itself. Dry stuff that would bring it to {goal, number} % water, any one of these: {driers}. Fork it out and mix that right through; nothing wet goes on until then, and a cover keeps the rain off.',
  'needs.drier': '{mass} ({volume}) of {material}',
  'needs.nitrogen.lacks':
    'To rot hot it lacks nitrogen: {high} to come to {highRatio, number}:1 ({highUrea} of urea, which is {grade, number} % nitrogen), {low} to come to {lowRatio, number}:1 ({lowUrea} of urea).',
  'needs.nitrogen.slow': 'Coarse wood gives its carbon slowly: begin with the lesser amount.',
  'needs.nitrogen.how':
    'Nitrogen alone will do. Give half, mix it in and water it, the rest after a week; manure, grass or coffee grounds do the same (common practice, no source). What runs off is lost and feeds ditches.',
  'needs.nitrogen.none-for-mould':
    'As leaf mould, as mulch or on paths it needs none; leaf mould then takes a year or two (common practice, no source).',
  'needs.nitrogen.enough': 'It needs no nitrogen.',
} as const;
