// Numbers for people: rounded to what their interval can bear, millimetres or inches by choice.
#pragma once

#include <QString>

namespace kempt {

enum class LengthUnit { millimetres, inches };

// What a reading's unit becomes, in the spelling of records: "mm" to "in", "1/cm" to "1/in", "mm/mm2" to "in/in2".
struct UnitConversion {
    double factor = 1;
    QString unit;
};
[[nodiscard]] UnitConversion conversion_of(const QString& unit, LengthUnit length);

// "62 % (59-65)": value and interval with as many decimals as the interval can bear; converts mm, 1/cm and mm/mm2
// when inches are asked for.
[[nodiscard]] QString with_interval(double value, double low, double high, const QString& unit,
                                    LengthUnit length = LengthUnit::millimetres);
[[nodiscard]] QString plain_value(double value, double half_interval, const QString& unit,
                                  LengthUnit length = LengthUnit::millimetres);

// A share in whole percent, "37 %"; what rounds to nothing is "0 %" from either side.
[[nodiscard]] QString whole_percent(double share);

}  // namespace kempt
