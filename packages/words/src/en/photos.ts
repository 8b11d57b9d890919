/** Pictures beside the lines of the daybook. */
export const photosEn = {
  'app.photo.take': 'Take a picture',
  'app.photo.choose': 'Choose a picture',
  'app.photo.busy': 'Making it small …',
  'app.photo.caption': 'What it shows',
  'app.photo.leaveOut': 'Leave it out',
  'app.photo.new': 'The picture that goes with this line',
  'app.photo.alt': 'A picture without words',
  'app.photo.add': 'A picture for this line',
  'app.photo.keep': 'Keep the picture',
  'app.photo.of': 'Pictures of it',
  'app.photo.private':
    'It is made small, and where it was taken is left out of it. Whoever may read the daybook sees it: ask before you show people.',
  'app.photo.refused.unreadable':
    'That can’t be read as a picture here. Take it anew, or save it as JPEG first; nothing was kept of it.',
  'app.photo.refused.too-large':
    'That file is larger than any picture of a phone, and opening it could stop the app. Choose a smaller one; nothing was kept of it.',
  'app.photo.not-here': 'The picture is not on this device yet. It comes with an exchange with one that has it.',
  'app.photo.unreadable': 'The picture is here, but can’t be shown.',
  'app.photo.removed': 'The picture was taken away.',
  'app.photo.letGo': 'Take the picture away',
  'app.photo.letGoAsk':
    'The picture goes from this device, and from every other as soon as it has exchanged. The line stays, and copies taken as a file keep it. Take it away?',
  'app.photo.letGoYes': 'Take it away',
} as const;
