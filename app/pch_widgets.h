// Precompiled for the desk.
#pragma once
#include "pch_qt.h"

#include <QtGui>
#include <QtWidgets>
