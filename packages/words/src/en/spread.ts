/** How much goes on a bed, a layer over a bed, a heap shared among beds. */
export const spreadEn = {
  'spread.answer.put': 'Put {stuff} on the bed of {area}.',
  'spread.answer.nothing': 'Put none of it on the bed of {area} this season.',
  'spread.stops.nitrogen': 'That is about the nitrogen the crops want.',
  'spread.stops.phosphorus':
    'Phosphorus stops more: so much brings {years, plural, one {one harvest’s phosphorus} other {about # harvests’ phosphorus}}.',
  'spread.stops.phosphorus-none': 'This soil has far too much phosphorus already: put on nothing that brings more.',
  'spread.stops.salts': 'Salts stop more: the crop that minds them most would suffer.',
  'spread.stops.depth': 'Depth stops more: beyond that a bed is hardly soil any more.',
  'spread.stops.supply': 'There is no more of it.',
  'spread.stops.locks-up': 'Dug in, it would lock nitrogen up: lay it on top as a mulch, or put it on the heap.',
  'spread.short': 'About {short} of nitrogen is still short; give it without phosphorus, or grow what wants less.',
  'spread.depth': '{stuff} lies {depth} deep over the bed, if it is spread evenly, and weighs about {mass}.',
  'spread.alone': '{stuff} by itself: {limits}.',
  'spread.alone.nitrogen': '{amount} for the nitrogen',
  'spread.alone.phosphorus': '{amount} until phosphorus builds up',
  'spread.alone.salts': '{amount} until salts hurt',
  'spread.alone.depth': '{amount} until it is too deep',
  'spread.alone.supply': '{amount} there is',
  'spread.alone.locks-up': 'none dug in, as it locks nitrogen up',
  'spread.worth':
    'Bought fertiliser for what the bed wanted of it would cost about {worth} ({low} to {high}); what it did not want is worth nothing here.',
  'spread.test': 'Nobody tested this soil: a test of phosphorus would change this most.',

  'layer.answer': 'A layer of {depth} over {area} is {volume}: {amount} of {stuff}, about {mass}.',
  'layer.phosphorus':
    'It brings about {phosphate} of phosphorus (P₂O₅) for each hectare, which vegetables take off in about {years} harvests ({low} to {high}). Once, on a new bed, that may be right; every year it builds up.',
  'layer.more': 'All its nitrogen is about {nitrogen}, its potassium (K₂O) {potash}.',
  'layer.settles': 'Loose stuff settles and the depth is guessed: order a tenth more rather than less.',

  'share.answer': 'Share it so: {beds}.',
  'share.none': 'So none of it goes on a bed by need: leave it in the heap.',
  'share.rich.need':
    'None on {bed}: by its test phosphorus is {class}, and this brings more. Feed nitrogen alone there.',
  'share.rich.area': 'By its test {bed} has phosphorus that is {class}: none of it should go there.',
  'share.stops.nitrogen': '{bed} wants no more nitrogen than that.',
  'share.stops.phosphorus': 'Phosphorus would build up on {bed} with more.',
  'share.stops.phosphorus.untested':
    'Phosphorus may build up on {bed} with more: nobody tested it, and a test would tell whether more may go there.',
  'share.small': 'Less than one of them whole is enough for {bed}: look at how much may go on there.',
  'share.stops.salts': 'Salts would hurt what grows on {bed} with more.',
  'share.stops.depth': 'More would lie too deep on {bed}.',
  'share.stops.supply': 'There is no more of it for {bed}.',
  'share.stops.locks-up': 'It gives {bed} no nitrogen this season, or takes some.',
  'share.left': 'What stays in the heap: {amount}.',
  'share.bed': '{amount} on {bed}',

  'spread.unit.perHa': '{kg} kg',
} as const;
