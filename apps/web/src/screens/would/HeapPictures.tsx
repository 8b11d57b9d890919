import '@loamwright/words/later';
import {
  type HeapRunAnswer,
  type HeapRunInput,
  type HeapShape,
  heapLimits_degC,
  shapeOn,
  USUAL_DOME,
  withVolume,
} from '@loamwright/science';
import { convert, unitFor, unitTable } from '@loamwright/units';
import { type ReactNode, useMemo, useState } from 'react';
import { Slider } from '../../parts/Slider.tsx';
import { Course } from '../../pictures/Course.tsx';
import { CutThrough } from '../../pictures/CutThrough.tsx';
import { useSpeaker } from '../../shell/words.tsx';
import { type AtMoment, degrees, lastOf, momentOf, whole } from './said.ts';

interface Properties {
  readonly input: HeapRunInput;
  readonly answer: HeapRunAnswer;
}

/** The heap cut through on a day that is chosen along its course, and its core over all the days. */
export function HeapPictures({ input, answer }: Properties): ReactNode {
  const speaker = useSpeaker();
  const days = Math.round(lastOf(answer.day));
  const [chosen, setChosen] = useState<number | null>(null);
  const day = chosen ?? Math.min(days, Math.round(hottestDay(answer)));
  const moment = momentOf(answer, day);
  const told = {
    day: whole(day),
    core: degrees(speaker, moment.core_degC),
    middle: degrees(speaker, moment.middle_degC),
    outside: degrees(speaker, moment.outside_degC),
  };
  return (
    <figure className="picture">
      <Cut input={input} answer={answer} moment={moment} label={speaker.say('wouldPage.section', told)} />
      <p className="told">{speaker.say('wouldPage.onDay', { ...told, oxygen: whole(moment.oxygen_pctVolume) })}</p>
      <Core answer={answer} moment={moment} />
      <Slider
        label={speaker.say('wouldPage.day')}
        most={days}
        value={day}
        sayValue={() => speaker.say('wouldPage.day.text', told)}
        onChange={setChosen}
      />
      <figcaption>{speaker.say('wouldPage.drawn', { of: answer.members })}</figcaption>
    </figure>
  );
}

/** The day on which the heap that is drawn is hottest. */
function hottestDay({ day, shells_degC }: HeapRunAnswer): number {
  const core = shells_degC.map(([first]) => first ?? Number.NEGATIVE_INFINITY);
  return day[core.indexOf(Math.max(...core))] ?? 0;
}

interface CutProperties extends Properties {
  readonly moment: AtMoment;
  readonly label: string;
}

/** Settling takes of the height: the width stays as it is when the heap is fullest where it lies. */
function Cut({ input, answer, moment, label }: CutProperties): ReactNode {
  const speaker = useSpeaker();
  const unit = unitFor('temperature', speaker.system);
  const day = answer.day[moment.at] ?? 0;
  const volume_m3 = answer.volume_m3.p50[moment.at] ?? 0;
  const fullest_m3 = answer.places.findLast(({ from_day }) => from_day <= day)?.volume_m3.p50 ?? volume_m3;
  const { form, width_m, height_m } = sectionOf(shapeOn(input, day), fullest_m3);
  return (
    <CutThrough
      label={label}
      form={form}
      width_m={width_m}
      height_m={(height_m * volume_m3) / fullest_m3}
      fullestHeight_m={height_m}
      shells_degC={answer.shells_degC[moment.at] ?? []}
      sayTemp={(temp_degC) => whole(convert(temp_degC, 'degC', unit))}
      unit={unitTable[unit].symbol}
    />
  );
}

interface Section {
  readonly form: 'box' | 'dome';
  readonly width_m: number;
  readonly height_m: number;
}

/** The section of a heap of a volume; a long heap is cut across. */
function sectionOf(shape: HeapShape, volume_m3: number): Section {
  if (shape.form === 'box') return { ...withVolume(shape, volume_m3), form: 'box' };
  if (shape.form === 'long') return { ...withVolume(shape, volume_m3), form: 'dome' };
  const { diameter_m, height_m } = withVolume(shape.form === 'dome' ? shape : USUAL_DOME, volume_m3);
  return { form: 'dome', width_m: diameter_m, height_m };
}

function Core({ answer, moment }: { readonly answer: HeapRunAnswer; readonly moment: AtMoment }): ReactNode {
  const speaker = useSpeaker();
  const unit = unitFor('temperature', speaker.system);
  const { p10, p50, p90 } = answer.core_degC;
  const points = useMemo(() => {
    const read = (temp_degC: number | undefined): number => convert(temp_degC ?? Number.NaN, 'degC', unit);
    return answer.day.map((day, i) => ({
      day,
      low: read(p10[i]),
      likely: read(p50[i]),
      high: read(p90[i]),
      one: read(answer.shells_degC[i]?.[0]),
    }));
  }, [answer, p10, p50, p90, unit]);
  return (
    <Course
      label={speaker.say('wouldPage.course', {
        days: whole(lastOf(answer.day)),
        start: degrees(speaker, p50[0] ?? Number.NaN),
        peakDay: whole(answer.peak_day.p50),
        peak: degrees(speaker, answer.peak_degC.p50),
        end: degrees(speaker, lastOf(p50)),
        day: whole(moment.day),
        low: degrees(speaker, moment.range_degC.low),
        high: degrees(speaker, moment.range_degC.high),
      })}
      points={points}
      heights={speaker.say('wouldPage.course.heights', { unit: unitTable[unit].symbol })}
      steps={speaker.say('wouldPage.course.days')}
      level={{
        at: convert(heapLimits_degC.sanitisingDay, 'degC', unit),
        word: speaker.say('wouldPage.course.hot'),
      }}
      chosen={moment.day}
    />
  );
}
