/** Output, cost and margin of many crops at once, from two countries. Figures only, in whole money as printed; read in 2026. */
import type { Budget, Printed } from "./budget";

/** Crop, price a tonne, tonnes a hectare, variable cost a hectare; then output and gross margin as printed, and ours where they differ. */
const ukCrops = [
  ["Feed wheat, first", "135", "9.0", "462", ["1215"], ["757", "753"]],
  ["Feed wheat, second", "135", "8.1", "506", ["1094"], ["590", "588"]],
  ["Bread wheat", "145", "8.6", "493", ["1247"], ["757", "754"]],
  ["Soft wheat", "142", "8.6", "462", ["1221"], ["819", "759"]],
  ["Feed barley", "115", "7.3", "371", ["834", "840"], ["523", "469"]],
  ["Malting barley", "135", "6.6", "349", ["891"], ["555", "542"]],
  ["Milling oats", "135", "6.4", "291", ["864"], ["575", "573"]],
  ["Oilseed rape", "320", "3.6", "484", ["1152"], ["667", "668"]],
  ["Winter beans", "160", "4.0", "273", ["640"], ["367"]],
] as const satisfies readonly (readonly [string, string, string, string, readonly [string, string?], readonly [string, string?]])[];

const printed = (crop: string, figure: string, [prints, ours]: readonly [string, string?]): Printed => ({
  crop,
  figure,
  prints,
  ...(ours === undefined ? {} : { ours }),
});

const uk: Budget = {
  id: "B16 winter crops 2017-18",
  source: {
    title: "How winter cropping gross margins stack up for 2017-18 (AHDB figures)",
    publisher: "Farmers Weekly (UK)",
    year: "2017",
    address: "https://www.fwi.co.uk/arable/how-winter-cropping-gross-margins-stack-up-2017-18.htm",
    where: "table of nine crops",
  },
  workbook: `
    Season
    | Setting   | Value |
    | Currency  | GBP   |
    | Area unit | ha    |
    Crops
    | Crop | Yield unit | Expected price |
    ${ukCrops.map(([crop, price]) => `| ${crop} | t | ${price} |`).join("\n")}
    Fields
    | Field | Crop | Hectares | Yield goal |
    ${ukCrops.map(([crop, , perHectare]) => `| Field of ${crop} | ${crop} | 10 | ${perHectare} |`).join("\n")}
    Other costs
    | Item | Kind | Amount | Basis | Shared over |
    ${ukCrops.map(([crop, , , cost]) => `| Variable costs | other operating | ${cost} | per hectare | ${crop} |`).join("\n")}`,
  printed: ukCrops.flatMap(([crop, , , , output, margin]) => [
    printed(crop, "plan/incomePerAcre", output),
    printed(crop, "plan/netPerAcre/operating", margin),
  ]),
};

/** Crop, yield unit, yield an acre, price, total cost an acre, and the net that is printed, losses in brackets there. */
const canadianCrops = [
  ["Spring wheat", "bu", "38", "5.50", "210", "-1"],
  ["Durum", "bu", "37", "9.00", "210", "123"],
  ["Oats", "bu", "82", "2.75", "197", "29"],
  ["Barley", "bu", "58", "3.00", "207", "-33"],
  ["Canaryseed", "lb", "1174", "0.24", "202", "80"],
  ["Flax", "bu", "23", "12.00", "205", "71"],
  ["Canola", "bu", "31", "9.20", "277", "8"],
  ["Mustard", "lb", "1069", "0.29", "190", "120"],
  ["Peas", "bu", "34", "6.50", "220", "1"],
  ["Lentils", "lb", "1371", "0.25", "242", "101"],
] as const;

const saskatchewan: Budget = {
  id: "C02 Saskatchewan crops 2014",
  source: {
    title: "Saskatchewan crop planning 2014 comparison",
    publisher: "Hursh Consulting column",
    year: "2014",
    address: "hursh.ca",
    where: "table",
  },
  workbook: `
    Season
    | Setting  | Value |
    | Currency | CAD   |
    Crops
    | Crop | Yield unit | Expected price |
    ${canadianCrops.map(([crop, unit, , price]) => `| ${crop} | ${unit} | ${price} |`).join("\n")}
    Fields
    | Field | Crop | Acres | Yield goal |
    ${canadianCrops.map(([crop, , perAcre]) => `| Field of ${crop} | ${crop} | 160 | ${perAcre} |`).join("\n")}
    Other costs
    | Item | Kind | Amount | Basis | Shared over |
    ${canadianCrops.map(([crop, , , , cost]) => `| All costs | other operating | ${cost} | per acre | ${crop} |`).join("\n")}`,
  printed: canadianCrops.map(([crop, , , , , net]) => ({ crop, figure: "plan/netPerAcre/operating", prints: net })),
};

export const margins: readonly Budget[] = [uk, saskatchewan];
