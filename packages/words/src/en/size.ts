/** How large a heap must be, and what straw walls do for it. */
export const sizeEn = {
  'size.answer.winter':
    'A heap of {volume} is large enough to keep a hot core through weather of {air}{insulated, plural, =1 { behind its insulation} other {}}, if the mix is right.',
  'size.answer.insulate':
    'A heap of {volume} keeps a hot core through weather of {air} only behind thick straw: set bales or a packed straw wall on all sides and lay straw on top.{mild, plural, =1 { From spring to autumn it may do as it stands.} other {}}',
  'size.answer.three-seasons':
    'A heap of {volume} does from spring to autumn{insulated, plural, =1 { behind its insulation} other {}}. In weather of {air} it is not to be counted on, with straw or without.',
  'size.answer.insulate-for-three-seasons':
    'A heap of {volume} does from spring to autumn only behind thick straw, on all sides and on top; in weather of {air} not even so.',
  'size.answer.too-small':
    'A heap of {volume} is too small to keep a hot core, in any season. It will rot slowly and cool: use it as a slow heap, or build it larger.',
  'size.answer-now.three-seasons':
    'A heap of {volume} is large enough to keep a hot core in weather of {air}{insulated, plural, =1 { behind its insulation} other {}}, if the mix is right. For winter ask again with its coldest weeks.',
  'size.answer-now.insulate-for-three-seasons':
    'A heap of {volume} keeps a hot core in weather of {air} only behind thick straw, on all sides and on top.',
  'size.answer-now.too-small':
    'A heap of {volume} is too small to keep a hot core, even in weather of {air}. It will rot slowly and cool: use it as a slow heap, or build it larger.',

  'size.season.now':
    'At {air} outside, the chance that the core holds {core}: as it stands, {bare}; behind thick straw, {wrapped}. Enough would be {enough} as it stands, {enoughWrapped} behind straw.',
  'size.season.three-seasons':
    'From spring to autumn, at {air} outside, the chance that the core holds {core}: as it stands, {bare}; behind thick straw, {wrapped}. Enough would be {enough} as it stands, {enoughWrapped} behind straw.',
  'size.season.winter':
    'In winter, at {air} outside, the chance that the core holds {core}: as it stands, {bare}; behind thick straw, {wrapped}. Enough would be {enough} as it stands, {enoughWrapped} behind straw.',
  'size.sides': '{width} × {depth} × {height}',
  'size.heat':
    'To hold the core {span} above the air, each cubic metre must make and keep {bare} W as it stands, {wrapped} W behind straw. A good mix still makes about {made} W after its first two weeks (our own estimate), and a quarter to more than half of that leaves with steam and air.',

  'size.note.nine-cubic-feet':
    'Is it really 9 cubic feet? The figure is often a slip for 3 × 3 × 3 ft, which is 27 cubic feet (0.76 m³), three times as much.',
  'size.note.frozen-store':
    'Or accept a frozen store: a heap that freezes loses nothing. Go on adding under dry leaves, do not turn it, and be ready to mix in dry stuff when it thaws. A frozen heap proves nothing safe.',
  'size.note.mix-first':
    'Size alone heats no poor mix: too dry, too wet, packed or short of nitrogen, it stays cold at any size.',
  'size.note.sizes-disagree':
    'Published smallest sizes run from 9 to 125 cubic feet (0.25 to 3.5 m³), because they mean different weather and different walls.',

  'cli.size': 'Whether a heap or bin of a size keeps a hot core, in three seasons and in winter, bare or behind straw.',
  'cli.size.size': 'its inside (1.2x1.2x1.2m, 4x4x4ft), a volume (0.76m3, 1yd3), or the name of a bay',
  'cli.size.air':
    'mean temperature of the coldest weeks, such as -5C or 20F (-5 °C if not said); at 10 °C or more only that weather is judged',
  'size.bounds': '{least} to {most}, no more than {height} high and {volume} in all',
  'cli.size.core': 'what the core is to hold; 55 °C (131 °F) if not said',
  'cli.size.insulated': 'sides and top are insulated already',
} as const;
