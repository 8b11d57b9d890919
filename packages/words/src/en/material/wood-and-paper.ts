/** Names of wood, bark, prunings, paper and cloth, and the words growers search them by. */
export const woodAndPaperEn = {
  'material.hedge-chippings.name': 'hedge chippings',
  'material.hedge-chippings.some': '{amount} of hedge chippings',
  'material.hedge-chippings.words':
    'hedge trimmings, hedge clippings, shrub trimmings, shreddings, shredded hedge, shredded prunings, garden shreddings, hedge cuttings, hedge prunings, chipped hedge, hedge shreddings, privet hedge, hedge cutting, box clippings, beech hedge clippings, hawthorn clippings, shredder chippings, garden chippings, brushwood chips',
  'material.conifer-trimmings.name': 'conifer trimmings',
  'material.conifer-trimmings.some': '{amount} of conifer trimmings',
  'material.conifer-trimmings.words':
    'leylandii, leylandii clippings, cypress hedge, thuja clippings, yew clippings, evergreen trimmings, leylandii hedge, conifer clippings, conifer hedge, cedar clippings, cypress clippings, juniper clippings, arborvitae clippings, macrocarpa, thuja',
  'material.leafy-trimmings.name': 'leafy trimmings',
  'material.leafy-trimmings.some': '{amount} of leafy trimmings',
  'material.leafy-trimmings.words':
    'green prunings, summer prunings, privet clippings, willow tops, leafy branches, tree trimmings, green branches, leafy prunings, soft prunings, tree loppings with leaves, willow tops and leaves, green twigs, shrub prunings, spring prunings, privet',
  'material.prunings.name': 'prunings',
  'material.prunings.some': '{amount} of prunings',
  'material.prunings.words':
    'brash, brush, twigs, sticks, branches, slash, loppings, apple prunings, woody prunings, lop and top, brushwood, tree prunings, dead branches, winter prunings, fruit tree prunings, rose prunings, small branches, kindling, stick pile',
  'material.vine-prunings.name': 'vine prunings',
  'material.vine-prunings.some': '{amount} of vine prunings',
  'material.vine-prunings.words':
    'vine cuttings, grape canes, grapevine prunings, grape prunings, grapevine cuttings, vine canes, kiwi prunings, hop bines, hop vines, wisteria prunings',
  'material.berry-canes.name': 'berry canes',
  'material.berry-canes.some': '{amount} of berry canes',
  'material.berry-canes.words':
    'raspberry canes, bramble, blackberry canes, brambles, currant prunings, gooseberry prunings, raspberry prunings, blackberry prunings, old canes, currant canes, briars, bramble stems, loganberry canes, rose canes',
  'material.wood-chips.name': 'wood chips',
  'material.wood-chips.some': '{amount} of wood chips',
  'material.wood-chips.words':
    'chips, chipped branches, tree chips, woodchip, arborist chips, chipped wood, hogfuel, woodchips, wood chip, ramial chips, ramial wood, tree surgeon chips, arborist wood chips, tree mulch, chipper mulch, chipped brush, forest mulch, tree waste, chipped tree, wood mulch',
  'material.softwood-bark.name': 'softwood bark',
  'material.softwood-bark.some': '{amount} of softwood bark',
  'material.softwood-bark.words':
    'bark, pine bark, fir bark, bark chips, bark mulch, composted bark, decorative bark, conifer bark, spruce bark, cedar bark, bark chippings, pine bark fines',
  'material.hardwood-bark.name': 'hardwood bark',
  'material.hardwood-bark.some': '{amount} of hardwood bark',
  'material.hardwood-bark.words': 'oak bark, tan bark, birch bark, oak tan, spent tan, deciduous bark, broadleaf bark',
  'material.sawdust.name': 'sawdust',
  'material.sawdust.some': '{amount} of sawdust',
  'material.sawdust.words':
    'saw dust, sander dust, wood dust, mill dust, fresh sawdust, chainsaw dust, bandsaw dust, wood flour, chainsaw chips, clean sawdust, joinery dust, mill sawdust',
  'material.rotted-sawdust.name': 'rotted sawdust',
  'material.rotted-sawdust.some': '{amount} of rotted sawdust',
  'material.rotted-sawdust.words':
    'old sawdust, aged sawdust, weathered sawdust, brown sawdust, well-rotted sawdust, decomposed sawdust, composted sawdust',
  'material.wood-shavings.name': 'wood shavings',
  'material.wood-shavings.some': '{amount} of wood shavings',
  'material.wood-shavings.words':
    'shavings, planer shavings, pine shavings, pine bedding, unused bedding, clean bedding, chippings from the plane, planings, plane shavings, joiner’s shavings, carpenter’s shavings, pet shavings, aspen bedding, flakes, wood flakes, excelsior, wood wool, animal bedding shavings, shavings bale',
  'material.wood-pellets.name': 'wood pellets',
  'material.wood-pellets.some': '{amount} of wood pellets',
  'material.wood-pellets.words':
    'stove pellets, bedding pellets, pellet bedding, pine pellets, heating pellets, pellet fuel, horse pellets, wood pellet litter, pellet litter, fuel pellets, compressed sawdust',
  'material.corrugated-cardboard.name': 'corrugated cardboard',
  'material.corrugated-cardboard.some': '{amount} of corrugated cardboard',
  'material.corrugated-cardboard.words':
    'cardboard, board, boxes, carton, egg boxes, egg cartons, toilet rolls, brown cardboard, box board, card, corrugate, packing boxes, cardboard boxes, delivery boxes, moving boxes, cereal boxes, cardboard tubes, loo rolls, shredded cardboard, pizza boxes, brown box, cartons',
  'material.newspaper.name': 'newspaper',
  'material.newspaper.some': '{amount} of newspaper',
  'material.newspaper.words':
    'newsprint, old papers, newspapers, newsprint paper, broadsheets, old newspapers, shredded newspaper, the local paper',
  'material.shredded-paper.name': 'shredded paper',
  'material.shredded-paper.some': '{amount} of shredded paper',
  'material.shredded-paper.words':
    'paper, office paper, mixed paper, waste paper, envelopes, shreddings of paper, shredder paper, brown paper, copy paper, printer paper, junk mail without gloss, paper bags, crosscut paper, white paper, shredded office paper, letters, bank statements, packing paper, kraft paper',
  'material.paper-towels.name': 'paper towels',
  'material.paper-towels.some': '{amount} of paper towels',
  'material.paper-towels.words':
    'kitchen paper, kitchen roll, tissues, paper napkins, serviettes, paper towel, kitchen towel, paper serviettes, hand towels, tissue paper, napkins, coffee filters',
  'material.cotton-rags.name': 'cotton rags',
  'material.cotton-rags.some': '{amount} of cotton rags',
  'material.cotton-rags.words':
    'rags, old T-shirts, linen, jute, burlap, hessian, natural-fibre cloth, cotton, old cotton, cotton clothes, rag, sacking, gunny, gunny bags, coir, cotton lint, old sheets, linen rags, jute sacks, old towels, coffee sacks, natural cloth, dryer lint of cotton',
} as const;
