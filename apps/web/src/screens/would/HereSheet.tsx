import '@loamwright/words/later';
import {
  blanketBounds_m,
  type HeapCoverId,
  type HeapWallId,
  heapCoverIds,
  heapWallIds,
  isBlanket,
  startBounds_degC,
  usualBlanket_m,
} from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { Choices } from '../../parts/Choices.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { closeSheet } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { type Here, type Week, weekIds, weeks_degC } from './asked.ts';
import { degrees } from './said.ts';

interface Properties {
  readonly here: Here;
  /** Whether somebody read the air beside it. */
  readonly isAirRead: boolean;
  readonly onHere: (here: Here) => void;
}

/** The air, the warmth of the stuff, the walls and the cover. The heap is followed anew when the sheet is closed with its own word. */
export function HereSheet({ here, isAirRead, onHere }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [walls, setWalls] = useState<HeapWallId>(here.walls);
  const [cover, setCover] = useState<HeapCoverId>(here.cover);
  const [air_degC, setAir] = useState<Here['air_degC'] | null>(here.air_degC);
  const [depth, setDepth] = useState({ depth_m: here.coverDepth_m ?? null, isWrong: false });
  const [start, setStart] = useState({ temp_degC: here.start_degC ?? null, isWrong: false });
  // The field is begun anew when a week is chosen, and left alone while somebody writes in it.
  const [chosenWeek, setChosenWeek] = useState(0);
  const chosen = air_degC === 'as-read' ? air_degC : (weekIds.find((id) => weeks_degC[id] === air_degC) ?? null);
  const isLacking = air_degC === null || start.isWrong || depth.isWrong;
  return (
    <Sheet title={speaker.say('wouldPage.here.title')}>
      <div className="stack">
        <Choices<Week | 'as-read'>
          legend={speaker.say('wouldPage.here.week')}
          options={[
            ...(isAirRead ? [{ value: 'as-read' as const, text: speaker.say('wouldPage.here.week.as-read') }] : []),
            ...weekIds.map((value) => ({
              value,
              text: speaker.say(`wouldPage.here.week.${value}`, {
                air: degrees(speaker, weeks_degC[value]),
              }),
            })),
          ]}
          value={chosen}
          onChange={(next) => {
            setAir(next === 'as-read' ? next : weeks_degC[next]);
            setChosenWeek((before) => before + 1);
          }}
        />
        <QuantityField
          key={chosenWeek}
          label={speaker.say('wouldPage.here.air')}
          hint={speaker.say('wouldPage.here.airHint')}
          shownAs="temperature"
          value={air_degC === 'as-read' ? null : air_degC}
          onChange={setAir}
        />
        <QuantityField
          label={speaker.say('wouldPage.here.start')}
          hint={speaker.say('wouldPage.here.startHint')}
          shownAs="temperature"
          value={here.start_degC ?? null}
          least={startBounds_degC.least}
          most={startBounds_degC.most}
          onChange={(temp_degC, _words, isWrong) => setStart({ temp_degC, isWrong })}
        />
        <Choices<HeapWallId>
          legend={speaker.say('wouldPage.here.walls')}
          options={heapWallIds.map((value) => ({ value, text: speaker.say(`wouldPage.walls.${value}`) }))}
          value={walls}
          onChange={setWalls}
        />
        <Choices<HeapCoverId>
          legend={speaker.say('wouldPage.here.cover')}
          options={heapCoverIds.map((value) => ({ value, text: speaker.say(`wouldPage.cover.${value}`) }))}
          value={cover}
          onChange={(next) => {
            setCover(next);
            setDepth({ depth_m: null, isWrong: false });
          }}
        />
        {isBlanket(cover) && (
          <QuantityField
            key={cover}
            label={speaker.say('wouldPage.here.depth')}
            hint={speaker.say('wouldPage.here.depthHint', {
              usual: speaker.likely(usualBlanket_m(cover), 'm', 'depth'),
            })}
            shownAs="depth"
            value={depth.depth_m}
            least={blanketBounds_m.least}
            most={blanketBounds_m.most}
            onChange={(depth_m, _words, isWrong) => setDepth({ depth_m, isWrong })}
          />
        )}
        <button
          type="button"
          className="plain-act strong"
          aria-disabled={isLacking}
          onClick={() => {
            if (air_degC === null || isLacking) return;
            onHere({
              air_degC,
              walls,
              cover,
              ...(depth.depth_m !== null && { coverDepth_m: depth.depth_m }),
              ...(start.temp_degC !== null && { start_degC: start.temp_degC }),
            });
            closeSheet();
          }}
        >
          {speaker.say('wouldPage.here.done')}
        </button>
      </div>
    </Sheet>
  );
}
