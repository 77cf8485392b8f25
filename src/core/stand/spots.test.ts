import { describe, expect, it } from "vitest";
import { Decimal } from "../numbers/decimal";
import { degreeLengths, metresFrom, middleOf } from "./spots";

const at = (latitude: string, longitude: string) => ({ latitude: new Decimal(latitude), longitude: new Decimal(longitude) });

describe("spots on the ground", () => {
  it("lie as far apart as on the ellipsoid, within a tenth of a metre in a degree", () => {
    // Lengths of a degree at 42° on WGS 84: 111,073.28 m to the north and 82,850.76 m to the east (computed from its two axes).
    const { north, east } = degreeLengths(new Decimal("42"));
    expect([north.minus("111073.28").abs().lt("0.1"), east.minus("82850.76").abs().lt("0.1")]).toEqual([true, true]);
    // At the equator 110,574 and 111,320 m, as printed in handbooks of map projections (from memory).
    const equator = degreeLengths(new Decimal("0"));
    expect([equator.north.toFixed(0), equator.east.toFixed(0)]).toEqual(["110574", "111319"]);
  });

  it("are measured east and north, to the west and the south below zero", () => {
    const { east, north } = metresFrom(at("42", "-93"), at("41.99", "-93.01"));
    expect([east.toFixed(1), north.toFixed(1)]).toEqual(["-828.5", "-1110.7"]);
  });

  it("have a middle that one far away does not move", () => {
    const near = [at("42.001", "-93.001"), at("42.002", "-93.002"), at("42.003", "-93.003")];
    expect(middleOf(near)).toEqual(at("42.002", "-93.002"));
    expect(middleOf([...near, at("52", "-3")]).latitude.toString()).toBe("42.0025");
    expect(middleOf([at("42", "-93")])).toEqual(at("42", "-93"));
  });
});
