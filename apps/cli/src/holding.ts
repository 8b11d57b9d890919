import { vocabularyOf } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import { type Names, namesFor } from './grammar/names.ts';
import type { Session } from './session.ts';

/** The names that a person of this holding may use: its own materials and measures, then everybody's. */
export function namesOf(session: Session, holding: Holding): Names {
  const measures = Object.keys(session.settings.measures_L ?? {}).map((id) => ({
    id,
    name: session.speaker.sayIf(`measure.${id}.name`, id.replaceAll('-', ' ')),
  }));
  return namesFor(session.speaker, { vocabulary: vocabularyOf(session.speaker, holding), measures });
}
