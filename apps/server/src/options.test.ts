import { describe, expect, it } from 'vitest';
import { readOptions, USUAL_PORT } from './options.ts';

const data = ['--data', '/tmp/garden'];

function codes(outcome: ReturnType<typeof readOptions>): readonly string[] {
  return outcome.ok ? [] : outcome.problems.map(({ code }) => code);
}

describe('the options', () => {
  it('keep to this computer unless told otherwise', () => {
    expect(readOptions(data, {})).toEqual({
      ok: true,
      value: { port: USUAL_PORT, host: '127.0.0.1', lan: false, data: '/tmp/garden', demo: false, json: false },
    });
  });

  it('are read from the environment, where they are not given', () => {
    const environment = { PORT: '8080', HOST: 'localhost', LOAMWRIGHT_DATA: '/srv/garden' };
    expect(readOptions([], environment)).toMatchObject({
      value: { port: 8080, host: '127.0.0.1', data: '/srv/garden' },
    });
    expect(readOptions(['--port', '81'], environment)).toMatchObject({ value: { port: 81 } });
  });

  it.each(['0.0.0.0', '::', '192.168.1.20', 'shed-pc.local'])('refuse plain HTTP at %s, with the reason', (host) => {
    expect(readOptions(data, { HOST: host })).toEqual({
      ok: false,
      problems: [{ code: 'host-not-loopback', path: 'HOST', found: host, wanted: 'localhost' }],
    });
    expect(codes(readOptions([...data, '--host', host], {}))).toEqual(['host-not-loopback']);
  });

  it('serve every address of the network with --lan, or the one given', () => {
    expect(readOptions([...data, '--lan'], {})).toMatchObject({ value: { lan: true, host: '0.0.0.0' } });
    expect(readOptions([...data, '--lan', '--host', '192.168.1.20'], {})).toMatchObject({
      value: { host: '192.168.1.20' },
    });
    expect(codes(readOptions([...data, '--lan', '--host', 'localhost'], {}))).toEqual(['host-loopback-lan']);
  });

  it.each(['MyBox', 'mybox.', 'MYBOX.'])('take the name %s as names are compared', (host) => {
    expect(readOptions([...data, '--lan', '--host', host], {})).toMatchObject({ value: { host: 'mybox' } });
    expect(codes(readOptions([...data, '--lan', '--host', 'LocalHost.'], {}))).toEqual(['host-loopback-lan']);
  });

  it.each(['x', '-1', '65536', '80.5', '1e3', ' 80', ''])('refuse the port %j', (port) => {
    expect(codes(readOptions([...data, `--port=${port}`], {}))).toEqual(['port-wrong']);
  });

  it('name what they do not know, and want a data folder', () => {
    expect(codes(readOptions([...data, '--open'], {}))).toEqual(['unknown-option']);
    expect(codes(readOptions([...data, 'extra'], {}))).toEqual(['unknown-option']);
    expect(codes(readOptions([...data, '--port'], {}))).toEqual(['unknown-option']);
    expect(codes(readOptions([], {}))).toEqual(['data-missing']);
  });
});
