/** Names of composts, soils, minerals and liquids, and the words growers search them by. */
export const startersAndMineralsEn = {
  'material.finished-compost.name': 'finished compost',
  'material.finished-compost.some': '{amount} of finished compost',
  'material.finished-compost.words':
    'compost, ripe compost, old compost, starter, mature compost, dirt from the heap, black gold, own compost, done compost, sieved compost, garden compost, well-rotted compost, bagged compost, green waste compost, council compost, municipal compost',
  'material.unfinished-compost.name': 'half-rotted compost',
  'material.unfinished-compost.some': '{amount} of half-rotted compost',
  'material.unfinished-compost.words':
    'unfinished compost, rough compost, half-done compost, partly rotted compost, compost screenings, oversize, tailings, overs, sieve leavings, compost overs, screened-out bits, immature compost, half-rotted stuff, young compost',
  'material.mushroom-compost.name': 'spent mushroom compost',
  'material.mushroom-compost.some': '{amount} of spent mushroom compost',
  'material.mushroom-compost.words':
    'mushroom compost, mushroom substrate, spent mushroom substrate, mushroom soil, SMC, spent mushroom blocks, mushroom blocks, mushroom kit, mushroom straw, mushroom muck',
  'material.leaf-mould.name': 'leaf mould',
  'material.leaf-mould.some': '{amount} of leaf mould',
  'material.leaf-mould.words':
    'leafmould, leaf mold, leafmold, rotted leaves, leaf soil, leaf compost, old leaf mould, two-year leaves',
  'material.worm-castings.name': 'worm castings',
  'material.worm-castings.some': '{amount} of worm castings',
  'material.worm-castings.words':
    'worm casts, vermicompost, worm compost, wormcast, worm cast, castings, worm bin compost, worm humus, worm poo, vermicast',
  'material.used-potting-mix.name': 'used potting compost',
  'material.used-potting-mix.some': '{amount} of used potting compost',
  'material.used-potting-mix.words':
    'old potting mix, potting compost, potting soil, spent grow bags, old pots, old compost from pots, spent potting soil, spent compost from pots, hanging baskets, old grow bags, growbag compost, used potting soil, seed tray leftovers, coir pots, spent potting mix, container mix, multipurpose compost',
  'material.peat.name': 'peat',
  'material.peat.some': '{amount} of peat',
  'material.peat.words':
    'peat moss, sphagnum peat, turf mould, moss peat, Irish moss peat, sphagnum, sedge peat, old peat, peat blocks',
  'material.soil.name': 'soil',
  'material.soil.some': '{amount} of soil',
  'material.soil.words':
    'garden soil, earth, topsoil, dirt, loam, mud, garden earth, subsoil, clay, molehill soil, mole hills, dirt from the garden, native soil',
  'material.wood-ash.name': 'wood ash',
  'material.wood-ash.some': '{amount} of wood ash',
  'material.wood-ash.words':
    'ash, ashes, fireplace ash, stove ash, bonfire ash, wood ashes, firewood ash, log burner ash, woodstove ash, potash ash, campfire ash, woodburner ash, cold ash, bonfire ashes',
  'material.charcoal.name': 'charcoal',
  'material.charcoal.some': '{amount} of charcoal',
  'material.charcoal.words':
    'char, biochar, barbecue charcoal from clean wood, charred wood, charred wood bits, lumpwood fines, charcoal fines, char from the fire, lump charcoal, charcoal dust, burnt wood, homemade charcoal',
  'material.ground-limestone.name': 'ground limestone',
  'material.ground-limestone.some': '{amount} of ground limestone',
  'material.ground-limestone.words':
    'lime, garden lime, agricultural lime, aglime, dolomite lime, chalk, limestone, dolomite, ag lime, calcium carbonate, carbonate of lime, calcified seaweed, magnesian lime, lime powder, limestone flour',
  'material.eggshells.name': 'eggshells',
  'material.eggshells.some': '{amount} of eggshells',
  'material.eggshells.words': 'egg shells, eggshell, crushed eggshells, eggshell grit, hen egg shells, eggshell powder',
  'material.seashells.name': 'seashells',
  'material.seashells.some': '{amount} of seashells',
  'material.seashells.words':
    'oyster shell, oyster shells, mussel shells, shell grit, cockle shells, shells from the beach, clam shells, scallop shells, crushed shells, whelk shells, shell meal, abalone shells, pipi shells, cockles',
  'material.rock-dust.name': 'rock dust',
  'material.rock-dust.some': '{amount} of rock dust',
  'material.rock-dust.words':
    'greensand, basalt dust, stone meal, rockdust, rock flour, quarry dust, granite dust, stone dust, basalt, volcanic rock dust, crusher dust, grit from the quarry',
  'material.urine.name': 'urine',
  'material.urine.some': '{amount} of urine',
  'material.urine.words': 'pee, liquid gold, wee, human urine',
  'material.water.name': 'water',
  'material.water.some': '{amount} of water',
  'material.water.words':
    'rain water, hose, rainwater, tap water, well water, butt water, water butt, rain barrel water, tank water, dechlorinated water, creek water',
} as const;
