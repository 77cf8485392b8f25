/** Formulas such as growers write, over a few invented cells; to see what the calculation engine can do. */
import type { Cell } from "../../../src/workbook/cell";

export const sampleCells: Readonly<Record<string, Cell>> = {
  A1: "Field", B1: "Crop", C1: "Acres", D1: "Yield", E1: "Date", F1: "Paid",
  A2: "North forty", B2: "Corn", C2: 38.5, D2: 182.25, E2: 46117, F2: true,
  A3: "Creek", B3: "Soybeans", C3: 81, D3: 54.5, E3: 46132, F3: false,
  A4: "Hill", B4: "Corn", C4: 20, D4: 171, E4: 46143.5, F4: true,
  A5: "Bottom land", B5: "Wheat", C5: 63.25, D5: "", E5: 46305, F5: false,
  A6: "12.5", B6: " spaced  out ", C6: 0, D6: -4, E6: "2026-05-01", F6: "",
};

export const formulas: readonly string[] = [
  // Counting and adding up
  "C2*D2", "SUM(C2:C6)", "SUM(C2:C4,C6,10)", "AVERAGE(D2:D6)", "COUNT(C2:D6)", "COUNTA(A2:F6)", "COUNTBLANK(D2:D6)", "MIN(C2:C6)", "MAX(C2:C6)", "MEDIAN(C2:C6)",
  "PRODUCT(C2:C4)", "SUMPRODUCT(C2:C4,D2:D4)", "SUMPRODUCT(C2:C4,D2:D4)/SUM(C2:C4)", "SUMPRODUCT((B2:B5=\"Corn\")*C2:C5)", "SUMPRODUCT(--(C2:C5>30))", "SUMPRODUCT(--(B2:B5=\"Corn\"),C2:C5)",
  "SUMIF(B2:B5,\"Corn\",C2:C5)", "SUMIF(C2:C5,\">30\")", "SUMIFS(C2:C5,B2:B5,\"Corn\",D2:D5,\">175\")", "COUNTIF(B2:B6,\"corn\")", "COUNTIF(A2:A6,\"*o*\")", "COUNTIFS(B2:B5,\"Corn\",F2:F5,TRUE)",
  "AVERAGEIF(B2:B5,\"Corn\",D2:D5)", "AVERAGEIFS(D2:D5,B2:B5,\"Corn\",C2:C5,\">30\")", "MAXIFS(C2:C5,B2:B5,\"Corn\")", "MINIFS(C2:C5,B2:B5,\"Corn\")", "SUBTOTAL(109,C2:C6)", "SUBTOTAL(9,C2:C6)", "SUBTOTAL(101,C2:C6)",
  "LARGE(C2:C6,2)", "SMALL(C2:C6,2)", "RANK(C3,C2:C6)", "STDEV(C2:C6)", "VAR(C2:C6)", "STDEV.S(C2:C6)", "PERCENTILE(C2:C6,0.25)", "QUARTILE(C2:C6,3)", "CORREL(C2:C4,D2:D4)", "SLOPE(D2:D4,C2:C4)", "INTERCEPT(D2:D4,C2:C4)", "FORECAST(50,D2:D4,C2:C4)",
  // Rounding
  "ROUND(C2*D2,1)", "ROUND(-2.5,0)", "ROUND(1234.5,-2)", "ROUNDUP(1.21,1)", "ROUNDDOWN(-1.29,1)", "INT(-1.5)", "TRUNC(-1.59,1)", "MROUND(17,5)", "CEILING(1.21,0.1)", "FLOOR(1.29,0.1)", "MOD(-7,3)", "QUOTIENT(17,5)", "ABS(D6)", "SIGN(D6)", "EVEN(3.1)", "ODD(3.1)",
  // Choosing
  "IF(C2>30,\"large\",\"small\")", "IF(D5=\"\",\"no yield\",D5)", "IF(AND(C2>30,B2=\"Corn\"),1,0)", "IF(OR(C2>30,B2=\"Oats\"),1,0)", "NOT(F2)", "XOR(F2,F3)", "IFERROR(1/0,\"none\")", "IFERROR(C2/0,0)", "IFNA(VLOOKUP(\"Nowhere\",A2:C5,3,FALSE),\"unknown\")", "IFS(C2>50,\"big\",C2>30,\"middle\",TRUE,\"small\")", "SWITCH(B2,\"Corn\",56,\"Soybeans\",60,0)", "CHOOSE(2,\"a\",\"b\",\"c\")",
  "ISBLANK(D5)", "ISNUMBER(C2)", "ISTEXT(A6)", "ISERROR(1/0)", "ISNA(NA())", "NA()", "1/0", "\"a\"+1", "ISEVEN(4)",
  // Looking up
  "VLOOKUP(\"Creek\",A2:D5,3,FALSE)", "VLOOKUP(46140,E2:F4,2,TRUE)", "HLOOKUP(\"Acres\",A1:D5,3,FALSE)", "INDEX(C2:C5,3)", "INDEX(A1:D5,3,2)", "MATCH(\"Hill\",A2:A5,0)", "INDEX(D2:D5,MATCH(\"Hill\",A2:A5,0))", "LOOKUP(2,{1,2,3},{\"a\",\"b\",\"c\"})", "XLOOKUP(\"Hill\",A2:A5,C2:C5)", "XLOOKUP(\"Gone\",A2:A5,C2:C5,\"none\")", "XMATCH(\"Hill\",A2:A5)", "ROW(C5)", "COLUMN(C5)", "ROWS(A2:A5)", "COLUMNS(A2:D2)", "SUM(OFFSET(C2,0,0,3,1))", "SUM(INDIRECT(\"C2:C4\"))",
  // Words
  "A2&\", \"&B2", "CONCATENATE(A2,\" \",C2)", "CONCAT(A2:A4)", "TEXTJOIN(\", \",TRUE,A2:A4)", "LEFT(A2,5)", "RIGHT(A2,5)", "MID(A2,3,4)", "LEN(B6)", "TRIM(B6)", "UPPER(B2)", "LOWER(B2)", "PROPER(\"north forty\")", "FIND(\"f\",A2)", "SEARCH(\"F\",A2)", "SUBSTITUTE(A2,\"o\",\"0\")", "REPLACE(A2,1,5,\"South\")", "REPT(\"ab\",3)", "EXACT(B2,\"corn\")", "VALUE(A6)", "TEXT(C2,\"0.00\")", "TEXT(1234.5,\"#,##0.00\")", "TEXT(E2,\"yyyy-mm-dd\")", "A6*2", "N(F2)", "T(A2)",
  // Days
  "YEAR(E2)", "MONTH(E2)", "DAY(E2)", "DATE(2026,5,1)", "DATE(2026,14,1)", "EDATE(E2,6)", "EOMONTH(E2,0)", "WEEKDAY(E2)", "WEEKDAY(E2,2)", "WEEKNUM(E2)", "ISOWEEKNUM(E2)", "DAYS(E5,E2)", "DATEDIF(E2,E5,\"d\")", "DATEDIF(E2,E5,\"m\")", "NETWORKDAYS(E2,E3)", "WORKDAY(E2,10)", "YEARFRAC(E2,E5)", "DATEVALUE(\"2026-05-01\")", "HOUR(E4)", "DAYS360(E2,E5)", "E5-E2",
  // Money
  "PMT(0.07/12,60,-25000)", "PMT(0.08,7,-180000,40000)", "IPMT(0.07,1,5,-10000)", "PPMT(0.07,1,5,-10000)", "PV(0.07,5,-1000)", "FV(0.07,5,-1000)", "NPER(0.07,-1000,5000)", "RATE(5,-1200,5000)", "NPV(0.07,100,200,300)", "IRR({-500,100,200,300})", "SLN(10000,2000,8)", "DB(10000,2000,8,1)", "DDB(10000,2000,8,1)", "EFFECT(0.07,12)",
  // Reckoning
  "2^0.5", "SQRT(C3)", "EXP(1)", "LN(C3)", "LOG10(C3)", "LOG(8,2)", "POWER(2,10)", "PI()*5^2/43560", "-2^2", "10%", "C2%", "1E3+1", "43560*12/(30*17.5)", "3=3.0", "\"a\"<\"B\"", "C2<>D2",
];

/** Formulas of the sample in which the engine and LibreOffice differ, and why. */
export const unlike: Readonly<Record<string, string>> = {
  "XLOOKUP(\"Hill\",A2:A5,C2:C5)": "LibreOffice 7 does not have it",
  "XLOOKUP(\"Gone\",A2:A5,C2:C5,\"none\")": "LibreOffice 7 does not have it",
  "XMATCH(\"Hill\",A2:A5)": "LibreOffice 7 does not have it",
  "SUM(OFFSET(C2,0,0,3,1))": "what it reads cannot be known beforehand, so it is left to Excel",
  "SUM(INDIRECT(\"C2:C4\"))": "what it reads cannot be known beforehand, so it is left to Excel",
};
