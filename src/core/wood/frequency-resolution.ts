import { centsBetween } from "../units/index.ts";
import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/** Width of one bin of a spectrum of N points: fs / N. sampleRate: Hz; points: N. Result: Hz. Source: discrete Fourier transform. */
export const frequencyResolution = (sampleRate: number, points: number): number => sampleRate / points;

export const frequencyResolutionMethod = woodMethod({
  id: "frequency-resolution",
  name: "how finely a spectrum shows a frequency",
  inputs: {
    sampleRate: positive("Hz", "samples a second"),
    points: { ...positive("1", "points of the transform"), whole: true },
    frequency: positive("Hz", "frequency read from it, without interpolation between bins"),
  },
  fields: {
    resolution: { meaning: "width of a bin", dimension: "Hz" },
    halfBinCents: { meaning: "half a bin above the frequency, as an interval", dimension: "{cent}" },
    modulusUncertainty: {
      meaning:
        "relative standard uncertainty of a modulus that goes with f squared: limits of half a bin, evenly likely",
      dimension: "1",
    },
  },
  source: sources.spectrum,
  refuses: ({ sampleRate, frequency }) =>
    frequency <= sampleRate / 2
      ? null
      : { name: "frequency (read from the spectrum)", needed: "at most half the samples a second" },
  run: ({ sampleRate, points, frequency }) => {
    const resolution = frequencyResolution(sampleRate, points);
    const half = resolution / 2;
    return {
      resolution,
      halfBinCents: centsBetween(frequency, frequency + half),
      modulusUncertainty: (2 * half) / frequency / Math.sqrt(3),
    };
  },
});
