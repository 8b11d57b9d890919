/** One caution each, from the one table in `reference/cautions.json`. */
export const cautionsEn = {
  'caution.fire':
    'Fire: a heap above about 80 °C (176 °F) may heat itself further. Check the probe in a second place and with a second thermometer first. If it is true, keep people, animals and buildings clear, have water at hand, do not dig into it alone, and call the fire service if you see smoke or smell scorching. Keep heaps away from woods and walls.',
  'caution.pits-gas':
    'Gas: never go into a manure pit, tank or closed pit to work or to help someone. Stirring slurry sets free hydrogen sulphide, which kills before it can be smelt.',
  'caution.roof-load':
    'Weight: wet soil is far heavier than it looks. On a roof, a balcony or a deck let a structural engineer say what it bears before anything is filled.',
  'caution.ammonia':
    'Ammonia stings eyes and lungs. Stand upwind, work in the open, and leave a closed shed until it has aired. The smell is nitrogen you are losing.',
  'caution.ash-live-coals':
    'Ash can hide live coals for days. Keep it in a lidded metal bin, on stone, until it is quite cold.',
  'caution.ash-caustic':
    'Wood ash is caustic: wear gloves and eye protection and keep out of the dust. Never put it with fresh manure, urine or ammonium: it drives the ammonia off.',
  'caution.manure-pathogens':
    'Manure can carry germs that make people ill. Until a logged heap meets your rule, count it as raw manure: worked in 120 days before harvest where the crop touches soil, 90 days where it does not. Wear gloves, wash hands, keep it off salad and away from wells.',
  'caution.dust-spores':
    'Dust from dry or mouldy stuff and from turning carries spores. Damp it, stand upwind, wear a P2 or N95 mask. People with asthma, cystic fibrosis or a weak immune system should keep away.',
  'caution.legionella':
    'Compost can hold Legionella. Open bags away from your face, damp the contents gently, wash your hands. Over-fifties, smokers and the ill are at more risk.',
  'caution.charcoal-dust': 'Charcoal dust harms lungs and can burn. Wet charcoal before you crush or carry it.',
  'caution.charcoal-making':
    'Charcoal is burnt in the open only, never indoors: its fumes hold carbon monoxide, which kills. Ask first whether burning is allowed. Dry wood, 5 m cleared all round, water and a shovel at hand, eyes covered. Drench it, spread it, look again next day; keep it outdoors for two days until it is cold.',
  'caution.treated-wood':
    'Never treated, painted or glued wood, nor its ash, nor coal ash: their metals stay in the soil.',
  'caution.doubtful-ground':
    'Ground beside old paint, busy roads or former works can hold lead and worse: have it tested, follow your local rules, and keep roots out of it until you know.',
  'caution.herbicide-carryover':
    'Some weed-killers (aminopyralid, clopyralid, picloram) pass through animals, hay, straw and clippings and survive any heap. Ask what was sprayed. If nobody knows, grow beans in it in pots for two to three weeks before it goes on a bed.',
  'caution.diseased-plants':
    'Clubroot, white rot, wilts, potato wart and blighted tubers stay out of any heap you cannot prove hot. In outbreak years follow your local plant-health notice.',
  'caution.seeding-weeds':
    'Rooting weeds (bindweed, couch, knotweed, dock) and seeding weeds survive a cool heap. Drown or dry them first, or put them in the hot core. Some must by law not leave your ground.',
  'caution.rats-flies':
    'Food scraps draw rats and flies. Bury them in the middle and cover every pail with dry stuff. No meat, fish, fat or dairy in an open heap.',
  'caution.glossy-print': 'Leave out glossy and coated print, tape and till receipts.',
  'caution.salt': 'Salty stuff: rinse seaweed or leave it in the rain, and go easy on seedlings.',
  'caution.walnut-juglone': 'Black walnut leaves and chips harm tomatoes and others: keep them to a heap of their own.',
  'caution.local-rules':
    'Local rules on heaps, manure, distances and burning come first; ask your own authority when in doubt.',
} as const;
